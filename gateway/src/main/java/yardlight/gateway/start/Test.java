package yardlight.gateway.start;

import java.util.ArrayList;
import java.util.List;
import yardlight.escalation.proof.LineHealth;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Tongue;

/**
 * What became of the test text, in words.
 *
 * @param asked whether one went out
 * @param answered whether somebody answered it, or anything else by that line
 */
record Test(String line, boolean asked, boolean answered, List<String> facts) {

    static Test of(String line, LineHealth health, Clockface clock, Tongue tongue) {
        var facts = new ArrayList<String>();
        health.test().ifPresent(test -> facts.add(tongue.say("start.test.asked", clock.exact(test.at()))));
        health.handedOverAt().ifPresent(at -> facts.add(tongue.say("start.test.handed", clock.exact(at))));
        health.deliveredAt().ifPresent(at -> facts.add(tongue.say("start.test.delivered", clock.exact(at))));
        health.trouble()
                .ifPresent(trouble ->
                        facts.add(tongue.say("start.test.trouble", clock.exact(trouble.at()), trouble.words())));
        health.answeredAt().ifPresent(at -> facts.add(tongue.say("start.test.answered", clock.exact(at))));
        return new Test(line, health.test().isPresent(), health.answeredAt().isPresent(), facts);
    }
}
