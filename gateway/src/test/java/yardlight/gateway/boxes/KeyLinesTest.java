package yardlight.gateway.boxes;

import static org.assertj.core.api.Assertions.assertThat;

import java.security.Principal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.Test;
import yardlight.db.boxkey.BoxKey;
import yardlight.escalation.Answer;
import yardlight.escalation.Entry;
import yardlight.escalation.Fixtures;
import yardlight.gateway.TestGateway;
import yardlight.gateway.lane.LogBook;

class KeyLinesTest {

    private static final Principal ANA = () -> "ana";

    private final List<Entry> lines = new ArrayList<>();

    private KeyLines into(LogBook book) {
        return new KeyLines(book, Fixtures::theSetup);
    }

    private CompletableFuture<Answer> keep(Entry line) {
        lines.add(line);
        return CompletableFuture.completedFuture(new Answer.Done());
    }

    @Test
    void say_who_made_and_who_revoked_which_key_of_which_box() {
        BoxKey key = BoxKey.made("4f1c", "mesa-9-box", "a hash", TestGateway.NOW);

        into(this::keep).made(ANA, key, Optional.of(TestGateway.NOW.plusSeconds(60)));
        into(this::keep).revoked(ANA, "mesa-9-box", "4f1c");

        assertThat(lines)
                .extracting(Entry::words)
                .containsExactly(
                        "ana made key 4f1c for box mesa-9-box; its others end at 2026-11-25T08:14:00Z",
                        "ana revoked key 4f1c of box mesa-9-box");
        assertThat(lines).extracting(Entry::about).containsOnly(Map.of("box", "mesa-9-box", "site", "mesa-9"));
    }

    @Test
    void undo_nothing_when_they_cannot_be_stored() {
        KeyLines unstored = into(line -> CompletableFuture.failedFuture(new IllegalStateException("busy")));

        unstored.revoked(ANA, "gone-box", "4f1c");

        assertThat(lines).isEmpty();
    }
}
