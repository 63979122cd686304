package yardlight.demo.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class HeapTest {

    @Test
    void the_sum_is_the_last_line_of_the_histogram() {
        String said =
                " num     #instances         #bytes  class name\n   1:          1000         123456  [B (java.base@17)\n"
                        + "Total         50000        7654321\n";

        assertThat(Heap.bytes(said)).isEqualTo(7_654_321);
    }

    @Test
    void there_is_no_figure_without_a_sum() {
        assertThatThrownBy(() -> Heap.bytes("1234: No such process\n"))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("No such process");
    }

    @Test
    void counts_what_this_process_holds() throws Exception {
        byte[] held = new byte[64 * 1024 * 1024];

        assertThat(Heap.liveMegabytes(ProcessHandle.current().pid())).isBetween(held.length / 1_048_576.0, 2_000.0);
    }
}
