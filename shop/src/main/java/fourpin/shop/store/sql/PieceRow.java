package fourpin.shop.store.sql;

import fourpin.measure.Length;
import fourpin.measure.Unit;
import fourpin.shop.store.Piece;
import fourpin.shop.store.Racked;
import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.SqlStatement;

/** A piece of the rack as its table holds it. */
public record PieceRow(Racked racked) {

  private static final String VALUES =
      """
      :version, :material, :form, :thickness, :thicknessUnit, :length, :lengthUnit, :width,
      :widthUnit, :quantity, :price, :note\
      """;

  private static final String COLUMNS =
      """
      version, material, form, thickness, thickness_unit, length, length_unit, width,
      width_unit, quantity, price, note\
      """;

  void insert(Handle db) {
    bind(db.createUpdate("insert into piece (id, " + COLUMNS + ") values (:id, " + VALUES + ")"))
        .execute();
  }

  /** Puts this in the place of a version. @return how many pieces that was: none, or one */
  int replace(Handle db, long version) {
    return bind(db.createUpdate(
            "update piece set ("
                + COLUMNS
                + ") = ("
                + VALUES
                + ") where id = :id and version = :replaced"))
        .bind("replaced", version)
        .execute();
  }

  private <S extends SqlStatement<S>> S bind(S statement) {
    Piece piece = racked.piece();
    statement
        .bind("id", racked.id())
        .bind("version", racked.version())
        .bind("material", piece.material())
        .bind("form", piece.form().name())
        .bind("quantity", piece.count())
        .bind("price", piece.price().map(BigDecimal::toPlainString))
        .bind("note", piece.note());
    bind(statement, "thickness", piece.thickness());
    bind(statement, "length", piece.length());
    return bind(statement, "width", piece.width());
  }

  private static <S extends SqlStatement<S>> S bind(S statement, String name, Length length) {
    return statement.bind(name, length.picometres()).bind(name + "Unit", length.unit().name());
  }

  static PieceRow of(ResultSet row) throws SQLException {
    return new PieceRow(new Racked(row.getString("id"), row.getLong("version"), piece(row)));
  }

  private static Piece piece(ResultSet row) throws SQLException {
    return new Piece(
        row.getString("material"),
        Piece.Form.valueOf(row.getString("form")),
        length(row, "thickness"),
        length(row, "length"),
        length(row, "width"),
        row.getInt("quantity"),
        Optional.ofNullable(row.getString("price")).map(BigDecimal::new),
        row.getString("note"));
  }

  private static Length length(ResultSet row, String name) throws SQLException {
    return new Length(row.getLong(name), Unit.valueOf(row.getString(name + "_unit")));
  }
}
