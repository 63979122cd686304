package yardlight.demo.outside;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import yardlight.demo.outside.Trace.Call;

class TraceTest {

    @Test
    void knows_where_a_call_began_and_where_it_was_back() {
        List<Call> calls = Trace.read(List.of(
                "11 read(9<TCP:[127.0.0.1:8080->127.0.0.1:4711]>, \"POST /a\", 8192) = 7",
                "12 fsync(5</home/yardlight.mv.db> <unfinished ...>",
                "11 write(9<TCP:[127.0.0.1:8080->127.0.0.1:4711]>, \"HTTP/1.1 202 \", 13) = 13",
                "12 <... fsync resumed>) = 0",
                "--- SIGSEGV ---"));

        assertThat(calls).extracting(Call::name).containsExactly("read", "write", "fsync");
        assertThat(calls.get(2)).isEqualTo(new Call("12", "fsync", 1, 3, "5</home/yardlight.mv.db> ) = 0"));
        assertThat(calls).extracting(Call::syncs).containsExactly(false, false, true);
    }
}
