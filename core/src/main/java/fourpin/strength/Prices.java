package fourpin.strength;

import fourpin.job.BoardStock;
import fourpin.job.Job;
import fourpin.job.Material;
import fourpin.job.SheetStock;
import fourpin.measure.Length;
import fourpin.strength.Made.Piece;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What wood costs by its area, from the prices that the job states; waste is not counted. */
final class Prices {

  private final Job job;

  Prices(Job job) {
    this.job = job;
  }

  /** Of pieces of a length; nothing if one of them has no price. */
  Optional<Double> of(List<Piece> pieces, double length) {
    double sum = 0;
    for (Piece piece : pieces) {
      Optional<Double> price = perArea(piece.of());
      if (price.isEmpty()) {
        return Optional.empty();
      }
      sum += price.get() * piece.width() * length;
    }
    return Optional.of(sum);
  }

  /**
   * By the cheapest of its stock, for each mm²; of what its layers are cut from where it has none.
   */
  private Optional<Double> perArea(Material material) {
    Optional<Double> stock = ofStock(material);
    return stock.isPresent() || !material.isCutInLayers() ? stock : ofLayers(material);
  }

  private Optional<Double> ofLayers(Material material) {
    double sum = 0;
    for (Material.Layer layer : material.layers()) {
      Optional<Double> price = layer.cutFrom().flatMap(this::named).flatMap(this::ofStock);
      if (price.isEmpty()) {
        return Optional.empty();
      }
      sum += price.get() * layer.share();
    }
    return Optional.of(sum);
  }

  private Optional<Material> named(String name) {
    return job.materials().stream().filter(m -> m.name().equals(name)).findFirst();
  }

  private Optional<Double> ofStock(Material material) {
    Stream<Optional<Double>> sheets =
        job.sheets().stream()
            .filter(s -> s.material().equals(material.name()))
            .map(Prices::perArea);
    Stream<Optional<Double>> boards =
        job.boards().stream()
            .filter(b -> b.material().equals(material.name()))
            .map(Prices::perArea);
    return Stream.concat(sheets, boards).flatMap(Optional::stream).min(Double::compare);
  }

  private static Optional<Double> perArea(SheetStock sheet) {
    return perArea(sheet.price(), sheet.length(), sheet.width());
  }

  private static Optional<Double> perArea(BoardStock board) {
    return perArea(board.price(), board.length(), board.width());
  }

  private static Optional<Double> perArea(Optional<BigDecimal> price, Length length, Length width) {
    return price.map(each -> each.doubleValue() / (length.mm() * width.mm()));
  }
}
