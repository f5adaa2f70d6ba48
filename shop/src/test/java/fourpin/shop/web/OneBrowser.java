package fourpin.shop.web;

import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;

/** Hands the tests one browser, started at first use and closed after the last test. */
final class OneBrowser implements ParameterResolver {

  @Override
  public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
    return parameter.getParameter().getType() == Browser.class;
  }

  @Override
  public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
    return context
        .getRoot()
        .getStore(ExtensionContext.Namespace.create(OneBrowser.class))
        .computeIfAbsent(Browser.class, _ -> Browser.start(), Browser.class);
  }
}
