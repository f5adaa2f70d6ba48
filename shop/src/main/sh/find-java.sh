# Sourced by the scripts. Prints the folder of a JDK 25, or fails.

find_java_25() {
  on_path=$(command -v java 2>/dev/null) && on_path=$(readlink -f "$on_path" 2>/dev/null) &&
    on_path=${on_path%/bin/java}
  for home in "${JAVA_HOME:-}" "${on_path:-}" /usr/lib/jvm/*25* /Library/Java/JavaVirtualMachines/*25*/Contents/Home \
    "${HOME:-}"/.sdkman/candidates/java/25* "${HOME:-}"/.jdks/*25*; do
    is_jdk_25 "$home" && printf '%s\n' "$home" && return
  done
  return 1
}

# The file "release" spares the tenth of a second that asking Java would take.
is_jdk_25() {
  [ -n "$1" ] && [ -x "$1/bin/java" ] && [ -x "$1/bin/javac" ] && {
    if [ -f "$1/release" ]; then
      grep -Eq '^JAVA_VERSION="25[".+-]' "$1/release"
    else
      "$1/bin/java" -version 2>&1 | grep -Eq '^[a-z]+ version "25[".+-]'
    fi
  }
}
