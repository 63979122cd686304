package yardlight.escalation.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The page names every number of the world, and its source. */
class FactsTableTest {

    @ParameterizedTest
    @EnumSource
    void each_number_stands_on_the_page_as_it_is_played(Fact fact) throws IOException {
        String value = BigDecimal.valueOf(fact.value).stripTrailingZeros().toPlainString();

        assertThat(Files.readAllLines(Path.of("..", "docs", "silence-study.md")))
                .contains("| " + fact.what + " | " + value + " | " + fact.source + " |");
    }
}
