package fourpin.shop.web.guard;

import fourpin.shop.store.Devices;
import fourpin.shop.yaml.TreeReader;
import java.time.InstantSource;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Decides which requests go on. Knows no web server: {@link GuardHandler} asks it. */
public final class Guard {

  /** Where a device is paired. */
  public static final String PAIR = "/pair";

  /** Where a device learns whom to trust, before it can be encrypted with. */
  public static final String TRUST = "/trust";

  /** Where a whole backup is brought to, by who sits at the machine that serves. */
  public static final String BACKUP = "/backup/look";

  /** What every page shows itself with: scripts, styles, fonts. */
  public static final String ASSETS = "/own/";

  /** The cookie of a paired device; by its name browsers take and send it encrypted only. */
  static final String COOKIE = "__Host-fourpin-device";

  /** Where a form, or a script's request, shows that it comes from our page. */
  public static final String TOKEN_FIELD = "token";

  public static final String TOKEN_HEADER = "Fourpin-Token";

  private static final int MEBI = 20;
  private static final Pattern ADDRESS = Pattern.compile("/|(/(?!\\.\\.?(/|$))[A-Za-z0-9._~-]+)+");

  private static final String FILE_TYPE = "multipart/form-data";
  private static final Set<String> TYPES =
      Set.of("application/x-www-form-urlencoded", FILE_TYPE, "application/json");
  private static final Set<String> FRAMES = Set.of("iframe", "frame", "object", "embed");
  private static final List<String> FORWARDED =
      List.of(
          "forwarded",
          "x-forwarded-for",
          "x-forwarded-host",
          "x-forwarded-proto",
          "x-real-ip",
          "via");
  private static final String TOO_LARGE =
      "That is larger than any job file or shop file, which may have "
          + (TreeReader.MOST_BYTES >> MEBI)
          + " MiB: choose the file itself, not a packet or a backup. Nothing was changed.";
  private static final int MOST_LENGTH_DIGITS = 12;
  private static final int LONGEST_NAME = 40;
  private static final String NAMELESS = "a device";

  private final Supplier<Reach> reach;
  private final Limits limits;
  private final Rates rates;
  private final Sessions sessions;
  private final PairingCodes codes;
  private final List<Function<Asked, Optional<Ruling>>> rules =
      List.of(
          this::tooOften,
          Guard::wrongMethod,
          this::tooLongAddress,
          Guard::oddAddress,
          this::wrongName,
          Guard::fromElsewhere,
          this::wrongBody);

  /**
   * @param reach as it is at the moment
   */
  public Guard(Supplier<Reach> reach, Limits limits, Devices devices, InstantSource clock) {
    this.reach = reach;
    this.limits = limits;
    this.rates = new Rates(limits, clock);
    this.sessions = new Sessions(devices, limits, clock);
    this.codes = new PairingCodes(limits, clock);
  }

  /** The codes that pair devices with this server. */
  public PairingCodes codes() {
    return codes;
  }

  public Limits limits() {
    return limits;
  }

  /**
   * Decides.
   *
   * @param token what the form or script shows; read only if everything else is in order
   */
  Ruling rule(Asked asked, Supplier<String> token) {
    return rules.stream()
        .flatMap(rule -> rule.apply(asked).stream())
        .findFirst()
        .orElseGet(() -> ofVisitor(asked, visitor(asked), token));
  }

  private Ruling ofVisitor(Asked asked, Visitor visitor, Supplier<String> token) {
    if (!(visitor instanceof Visitor.Host) && isOverheard(asked) && !saysWhomToTrust(asked)) {
      return encryptedOnly(asked);
    }
    boolean open = asked.path().equals(PAIR) || saysWhomToTrust(asked);
    if (visitor instanceof Visitor.Stranger && !open) {
      return changes(asked)
          ? new Ruling.Refused(401, "Pair this device first.")
          : new Ruling.Led(asked.path().equals("/") ? PAIR : PAIR + "?to=" + asked.path());
    }
    return changes(asked) && !sessions.isTokenOf(visitor, token.get())
        ? new Ruling.Refused(403, "The page is out of date: open it anew.")
        : new Ruling.Admitted(visitor);
  }

  /**
   * On a network nothing is told to whoever listens, and nothing is taken from whoever changes what
   * is sent: what is not encrypted learns whom to trust, and where to go on.
   */
  private Ruling encryptedOnly(Asked asked) {
    Optional<String> there = reach.get().origin(asked.header("host").orElse(""));
    return changes(asked) || there.isEmpty()
        ? new Ruling.Refused(403, "This is taken encrypted only: open it by https.")
        : new Ruling.Led(
            asked.path().equals("/") ? TRUST : there.get() + asked.path() + question(asked));
  }

  private static String question(Asked asked) {
    return asked.query().isEmpty() ? "" : "?" + asked.query();
  }

  private boolean isOverheard(Asked asked) {
    return asked.line() == Asked.Line.PLAIN && reach.get().devices() == Asked.Line.ENCRYPTED;
  }

  private static boolean saysWhomToTrust(Asked asked) {
    return asked.path().equals(TRUST)
        || asked.path().startsWith(TRUST + "/")
        || asked.path().startsWith(ASSETS);
  }

  /**
   * This machine asks itself in plain text, by a name that is good here only. A request that came
   * through another server may have come from anywhere.
   */
  private Visitor visitor(Asked asked) {
    boolean here =
        asked.line() == Asked.Line.PLAIN
            && asked.from().isLoopbackAddress()
            && asked.header("host").filter(Reach::isHere).isPresent()
            && FORWARDED.stream().noneMatch(asked::has);
    return here
        ? new Visitor.Host()
        : cookie(asked)
            .flatMap(sessions::with)
            .<Visitor>map(Visitor.Paired::new)
            .orElseGet(Visitor.Stranger::new);
  }

  private static Optional<String> cookie(Asked asked) {
    return asked.headers().getOrDefault("cookie", List.of()).stream()
        .flatMap(all -> Stream.of(all.split(";")))
        .map(String::strip)
        .filter(one -> one.startsWith(COOKIE + "="))
        .map(one -> one.substring(COOKIE.length() + 1))
        .findFirst();
  }

  private Optional<Ruling> tooOften(Asked asked) {
    return rates
        .count(asked.from())
        .map(
            wait ->
                new Ruling.Refused(429, "Too many requests: wait a little.", Optional.of(wait)));
  }

  private static Optional<Ruling> wrongMethod(Asked asked) {
    return refuseIf(
        !Set.of("GET", "HEAD", "POST").contains(asked.method()),
        405,
        "There are only GET, HEAD and POST here.");
  }

  private static boolean changes(Asked asked) {
    return asked.method().equals("POST");
  }

  private Optional<Ruling> tooLongAddress(Asked asked) {
    return refuseIf(
        asked.path().length() > limits.addressChars()
            || asked.query().length() > limits.addressChars(),
        414,
        "That is no address of a page.");
  }

  /**
   * What the guard reads is what the server finds: no dots that lead back, nothing written in code.
   */
  private static Optional<Ruling> oddAddress(Asked asked) {
    return refuseIf(!isAddress(asked.path()), 400, "That is no address of a page.");
  }

  /**
   * Whether it can be a page of this very server: browsers take what begins with two strokes, with
   * one that leans back, or with a scheme, for an address elsewhere.
   */
  public static boolean isAddress(String path) {
    return ADDRESS.matcher(path).matches();
  }

  private Optional<Ruling> wrongName(Asked asked) {
    return refuseIf(
        asked.header("host").filter(host -> reach.get().includes(host)).isEmpty(),
        421,
        "Ask for this machine by its own name or address.");
  }

  /**
   * Browsers say where a request comes from (Fetch Metadata, Origin of RFC 6454). Links from
   * elsewhere may lead here; nothing of ours is shown inside another site, and no change comes from
   * one. A browser too old to say so at a change is refused.
   */
  private static Optional<Ruling> fromElsewhere(Asked asked) {
    Optional<String> site = asked.header("sec-fetch-site");
    boolean link =
        asked.header("sec-fetch-mode").filter("navigate"::equals).isPresent()
            && asked.header("sec-fetch-dest").filter(FRAMES::contains).isEmpty();
    boolean ours = site.map(s -> s.equals("same-origin")).orElseGet(() -> sameOrigin(asked));
    boolean visit = site.isEmpty() || site.get().matches("same-origin|none") || link;
    return refuseIf(
        changes(asked) ? !ours || otherOrigin(asked) : !visit,
        403,
        "This is taken from Fourpin's own pages only.");
  }

  private static boolean sameOrigin(Asked asked) {
    return asked.has("origin") && !otherOrigin(asked);
  }

  /**
   * @return whether it names an origin, and one that is not ours
   */
  private static boolean otherOrigin(Asked asked) {
    return asked.has("origin")
        && !asked
            .header("origin")
            .equals(asked.header("host").map(host -> asked.line().scheme() + host));
  }

  private Optional<Ruling> wrongBody(Asked asked) {
    if (!changes(asked)) {
      return refuseIf(
          asked.has("transfer-encoding")
              || asked.header("content-length").filter(l -> !l.equals("0")).isPresent(),
          400,
          "Nothing can be sent along with a question.");
    }
    String type =
        asked
            .header("content-type")
            .map(t -> t.split(";")[0].strip().toLowerCase(Locale.ROOT))
            .orElse("");
    if (!TYPES.contains(type)) {
      return refuseIf(true, 415, "A change is a form.");
    }
    return wrongLength(asked, type.equals(FILE_TYPE) ? mostOfFile(asked) : limits.formBytes());
  }

  private long mostOfFile(Asked asked) {
    boolean backup = asked.path().equals(BACKUP) && visitor(asked) instanceof Visitor.Host;
    return backup ? limits.backupBytes() : limits.fileBytes();
  }

  private static Optional<Ruling> wrongLength(Asked asked, long most) {
    Optional<String> length =
        asked.header("content-length").filter(l -> l.matches("\\d{1," + MOST_LENGTH_DIGITS + "}"));
    return length.isEmpty()
        ? refuseIf(true, 411, "A change says how long it is.")
        : refuseIf(Long.parseLong(length.get()) > most, 413, TOO_LARGE);
  }

  private static Optional<Ruling> refuseIf(boolean wrong, int status, String words) {
    return wrong ? Optional.of(new Ruling.Refused(status, words)) : Optional.empty();
  }

  /** What pages put into their forms. */
  public String formToken(Visitor visitor) {
    return sessions.formToken(visitor);
  }

  /**
   * Pairs a device.
   *
   * @param name as its owner calls it; only letters, digits, blanks and dashes of it are kept
   * @return what sets its cookie; nothing if the code is wrong, used up or too old
   */
  public Optional<String> pair(String code, String name) {
    String called = plain(name);
    return codes.redeem(code) ? Optional.of(setCookie(sessions.pair(called))) : Optional.empty();
  }

  private static String plain(String name) {
    String plain =
        name.codePoints()
            .filter(c -> Character.isLetterOrDigit(c) || c == ' ' || c == '-')
            .limit(LONGEST_NAME)
            .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
            .toString()
            .strip();
    return plain.isEmpty() ? NAMELESS : plain;
  }

  /** Not for scripts, and not with requests that come from elsewhere (RFC 6265). */
  private String setCookie(String secret) {
    return COOKIE
        + "="
        + secret
        + "; Path=/; Secure; HttpOnly; SameSite=Strict; Max-Age="
        + limits.pairingLife().toSeconds();
  }
}
