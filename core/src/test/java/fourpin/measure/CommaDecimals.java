package fourpin.measure;

import java.util.Locale;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/** Runs each test where decimals are written with a comma, and puts the locale back after it. */
public final class CommaDecimals implements BeforeEachCallback, AfterEachCallback {

  private static final ExtensionContext.Namespace OURS =
      ExtensionContext.Namespace.create(CommaDecimals.class);

  @Override
  public void beforeEach(ExtensionContext context) {
    context.getStore(OURS).put(Locale.class, Locale.getDefault());
    Locale.setDefault(Locale.GERMANY);
  }

  @Override
  public void afterEach(ExtensionContext context) {
    Locale.setDefault(context.getStore(OURS).get(Locale.class, Locale.class));
  }
}
