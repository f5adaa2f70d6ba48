package fourpin.shop.store;

import java.nio.file.Path;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;

/** Hands the tests one PostgreSQL server, started at first use and stopped after the last test. */
public final class OnePostgres implements ParameterResolver {

  private static final Path ROOT = Path.of("..").toAbsolutePath().normalize();

  @Override
  public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
    return parameter.getParameter().getType() == PostgresServer.class;
  }

  @Override
  public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
    return context
        .getRoot()
        .getStore(ExtensionContext.Namespace.create(OnePostgres.class))
        .computeIfAbsent(
            PostgresServer.class, _ -> PostgresServer.start(ROOT), PostgresServer.class);
  }
}
