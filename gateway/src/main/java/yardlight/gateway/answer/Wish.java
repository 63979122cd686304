package yardlight.gateway.answer;

import java.util.List;
import java.util.Set;
import yardlight.escalation.Stimulus;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Stop;
import yardlight.gateway.answer.Replies.Outcome;
import yardlight.gateway.lane.Lane;

/**
 * What a sender wants of the line itself: nothing more by it, or everything again.
 *
 * @param people every contact with that line: a line that several share is stopped for all of them
 * @param stops the lines that are stopped now
 */
record Wish(Sender sender, List<Contact> people, Set<AlarmKey> stops, Sentences sentences) {

    /** Whether nothing is to go to the sender, not even an answer. */
    boolean stopped() {
        return people.stream().anyMatch(contact -> keys(contact).stream().anyMatch(stops::contains));
    }

    /** The answer is the last thing that goes to the line: who says it twice is not answered twice. */
    Outcome stop(Lane lane) {
        boolean again = stopped();
        boolean others = people.stream().anyMatch(this::hasOthers);
        decide(lane, true);
        return Outcome.nothing(again ? "" : Replies.oneLine(sentences.stopped(others)));
    }

    /** Who comes back hears how much waits, for they may have missed the texts about it. */
    Outcome start(Lane lane, Waiting waiting) {
        long alarms = waiting.waiting().stream()
                .filter(one -> !stops.contains(one.alarm().key()))
                .count();
        String answer = stopped() ? sentences.started((int) alarms) : sentences.notStopped();
        decide(lane, false);
        return Outcome.nothing(Replies.oneLine(answer));
    }

    private void decide(Lane lane, boolean stop) {
        for (Contact contact : people) {
            for (String address : sender.addresses(contact)) {
                String words = contact.name() + " wrote " + (stop ? "STOP" : "START") + " from " + sender;
                lane.decide(new Stimulus.Stopped(contact.id(), address, stop, words));
            }
        }
    }

    private List<AlarmKey> keys(Contact contact) {
        return sender.addresses(contact).stream()
                .map(address -> Stop.key(contact.id(), address))
                .toList();
    }

    private boolean hasOthers(Contact contact) {
        List<String> these = sender.addresses(contact);
        return contact.lines().stream()
                .anyMatch(line ->
                        !these.contains(line.address()) && !stops.contains(Stop.key(contact.id(), line.address())));
    }
}
