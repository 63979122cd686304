package yardlight.gateway.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yardlight.gateway.problem.Problem;

/** The examples of RFC 4180, section 2, and what boxes make of it. */
class CsvTest {

    @Test
    void gives_an_object_for_each_line_by_the_names_of_the_first() {
        assertThat(members("a,b,c\r\naaa,bbb,ccc\r\nzzz,yyy,xxx\r\n"))
                .containsExactly(
                        Map.of("a", "aaa", "b", "bbb", "c", "ccc"), Map.of("a", "zzz", "b", "yyy", "c", "xxx"));
        assertThat(members("a,b,c\r\naaa,bbb,ccc")).hasSize(1);
    }

    @Test
    void takes_values_in_quotes_with_commas_ends_of_lines_and_quotes_in_them() {
        assertThat(members("a,b,c\n\"aaa\",\"b\r\nb,b\",\"c\"\"c\"\n"))
                .containsExactly(Map.of("a", "aaa", "b", "b\r\nb,b", "c", "c\"c"));
        assertThat(members("a\n\"\"\"\"\n")).containsExactly(Map.of("a", "\""));
    }

    @Test
    void takes_an_empty_value_for_an_absent_one_and_an_empty_line_for_none() {
        assertThat(members("\uFEFFa, b\n\n1,\n\n, 2 \n3\n"))
                .containsExactly(Map.of("a", "1"), Map.of("b", "2"), Map.of("a", "3"));
        assertThat(members("a,b")).isEmpty();
        assertThat(members("a,b\n")).isEmpty();
    }

    @Test
    void finds_fault_with_more_values_than_names() {
        assertThat(Document.csv("a\n1,2\n").get(0).faults()).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "\n1", "a,,b\n", "a,a\n", "a\n\"x", "a\n\"x\"y\n", "a\nx\"y\"\n"})
    void refuses_what_is_none(String text) {
        assertThatThrownBy(() -> Document.csv(text)).isInstanceOf(Problem.class);
    }

    @Test
    void ends_whatever_comes() {
        var random = new Random(3);
        String signs = "a,\"\r\n\uFEFF1 ";
        for (int i = 0; i < 20_000; i++) {
            var text = new StringBuilder("a,b\n");
            for (int n = random.nextInt(12); n > 0; n--) {
                text.append(signs.charAt(random.nextInt(signs.length())));
            }
            try {
                assertThat(Document.csv(text.toString())).isNotNull();
            } catch (Problem refused) {
                assertThat(refused.status().value()).isEqualTo(400);
            }
        }
    }

    private static List<Map<String, Object>> members(String text) {
        return Document.csv(text).stream()
                .map(document -> ((Node.Members) document.root()).nodes())
                .map(nodes -> {
                    Map<String, Object> texts = new java.util.HashMap<>();
                    nodes.forEach((name, node) -> {
                        if (node instanceof Node.Text value) {
                            texts.put(name, value.value());
                        }
                    });
                    return texts;
                })
                .toList();
    }
}
