package fourpin.shop.fields;

import fourpin.shop.edit.Route;
import fourpin.shop.yaml.FileKind;
import fourpin.shop.yaml.Path;
import fourpin.shop.yaml.Problem;

/** Which problem of a file is about which field. */
public final class Complaints {

  private Complaints() {}

  /** Whether it is about what stands there, or about something in it. */
  public static boolean isAbout(Problem problem, Route route) {
    String name = name(route);
    String thing = problem.thing();
    return thing.equals(name) || thing.startsWith(name + " '") || thing.startsWith(name + ".");
  }

  /** Whether it is about a key somewhere below a place. @param key with points between groups */
  public static boolean isAboutKey(Problem problem, Route above, String key) {
    String thing = problem.thing().replaceFirst(" '.*", "");
    return isAbout(problem, above) && thing.endsWith("." + key);
  }

  private static String name(Route route) {
    Path path = Path.top(FileKind.JOB);
    for (Route.Step step : route.steps()) {
      path =
          switch (step) {
            case Route.Key(String name) -> path.to(name);
            case Route.Item(int number, _) -> path.item(number);
          };
    }
    return path.name();
  }
}
