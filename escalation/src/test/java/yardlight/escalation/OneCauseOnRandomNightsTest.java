package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** The promises themselves are held against ten thousand nights with all the others. */
class OneCauseOnRandomNightsTest {

    @Test
    void alarms_join_callouts_of_their_cause_in_every_way() {
        List<String> words = LongStream.range(0, 200)
                .mapToObj(seed -> new RandomNight(seed).play())
                .flatMap(night -> night.happenings().stream())
                .flatMap(step -> step.decision().entries().stream())
                .map(Entry::words)
                .toList();

        assertThat(words)
                .as("joined a callout")
                .anyMatch(line -> line.contains(" takes in "))
                .as("was answered with another")
                .anyMatch(line -> line.contains(" acknowledged with "))
                .as("took along what nobody had answered")
                .anyMatch(line -> line.contains(" ended: joined the callout with code "));
    }
}
