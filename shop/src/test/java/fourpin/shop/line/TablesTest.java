package fourpin.shop.line;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.sheets.packet.Packet;
import fourpin.sheets.pages.Block;
import fourpin.sheets.pages.Table;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Tables of packets, whatever a case lacks: adjustable shelves, fixed ones, a back. */
class TablesTest {

  @ParameterizedTest
  @MethodSource("fourpin.shop.line.FormulasTest#jobs")
  void noTableIsEmpty(Path job) {
    Packet packet = Packet.compose(PlannedExamples.plan(job));
    List<Table> tables =
        packet.booklet().sections().stream().flatMap(section -> tables(section.blocks())).toList();
    assertThat(tables).hasSizeGreaterThan(3);
    assertThat(tables.stream().filter(table -> table.rows().isEmpty()).map(Table::columns))
        .isEmpty();
  }

  private static Stream<Table> tables(List<Block> blocks) {
    return blocks.stream().flatMap(TablesTest::tables);
  }

  private static Stream<Table> tables(Block block) {
    return switch (block) {
      case Table table -> Stream.of(table);
      case Block.Together together -> tables(together.blocks());
      case Block.Columns columns -> tables(columns.blocks());
      case Block.Beside beside -> Stream.concat(tables(beside.left()), tables(beside.right()));
      case Block.Steps steps -> steps.steps().stream().flatMap(step -> tables(step.more()));
      default -> Stream.empty();
    };
  }
}
