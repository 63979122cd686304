package yardlight.channels.modem;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import yardlight.channels.modem.ModemSettings.Sim;

/**
 * Brings a modem to where it sends and takes texts in PDU mode. It does no harm to do it over and over, and it is done so: a
 * modem that starts anew by itself has forgotten all of it, and does not always say so.
 */
final class SettingUp {

    private static final int TRIES = 5;
    private static final Duration AT_ONCE = Duration.ofSeconds(1);

    /** Where texts are kept: the card, which every modem has, or the modem. For all three uses of clause 3.2.2. */
    private static final List<String> MEMORIES = List.of("SM", "ME");

    /**
     * Clause 3.4.1: tell of texts and keep them; reports the same, then reports told as they come, then none; and for a modem
     * that knows less, the least.
     */
    private static final List<String> NEWS = List.of("2,1,0,2,0", "2,1,0,1,0", "2,1,0,0,0", "1,1");

    private final ModemSettings settings;
    private final PinTries tries;

    SettingUp(ModemSettings settings) {
        this.settings = settings;
        this.tries = new PinTries(settings.sim().tried());
    }

    /** Gets the modem's attention after its port was opened, whatever it was doing. */
    void begin(Dialogue dialogue) throws Gone {
        Duration answer = settings.timeouts().answer();
        Duration patience = answer.compareTo(AT_ONCE) < 0 ? answer : AT_ONCE;
        for (int left = TRIES; ; left--) {
            dialogue.startAnew();
            try {
                dialogue.ask("AT", patience);
                // The answer may have been to something that was asked before the port was opened.
                dialogue.startAnew();
                return;
            } catch (Gone e) {
                if (left == 1) {
                    throw new Gone("the modem at " + settings.port() + " does not answer", e);
                }
            }
        }
    }

    /** @return the memory in which texts are kept; empty if the modem does not let us choose one */
    Optional<String> setUp(Dialogue dialogue) throws Gone, NotReady {
        dialogue.ask("ATE0Q0V1");
        dialogue.ask("AT+CMEE=1");
        unlock(dialogue);
        require(dialogue.ask("AT+CMGF=0"), "the modem does not take texts");
        // Without phase 2+ nothing that it tells has to be acknowledged (clause 3.2.1).
        dialogue.ask("AT+CSMS=0");
        Optional<String> memory = first(dialogue, MEMORIES, "AT+CPMS=\"%1$s\",\"%1$s\",\"%1$s\"");
        first(dialogue, NEWS, "AT+CNMI=%s");
        return memory;
    }

    private static Optional<String> first(Dialogue dialogue, List<String> choices, String command) throws Gone {
        for (String choice : choices) {
            if (dialogue.ask(String.format(command, choice)).isOk()) {
                return Optional.of(choice);
            }
        }
        return Optional.empty();
    }

    /** TS 27.007 clause 8.3. */
    private void unlock(Dialogue dialogue) throws Gone, NotReady {
        Answer answer = dialogue.ask("AT+CPIN?");
        if (!answer.isOk() && answer.result().startsWith(Trouble.OF_THE_MODEM)) {
            throw new NotReady("the modem cannot use its SIM card: " + Trouble.words(answer));
        }
        String state = answer.values().map(values -> values[0]).orElse("READY");
        switch (state) {
            case "READY" -> tries.taken();
            case "SIM PIN" -> unlock(dialogue, settings.sim());
            case "SIM PUK" -> throw new NotReady("the SIM card is locked and wants its PUK: unlock it in a phone");
            default -> throw new NotReady("the SIM card wants something that we cannot give: " + state);
        }
    }

    private void unlock(Dialogue dialogue, Sim sim) throws Gone, NotReady {
        String pin = sim.pin().orElseThrow(() -> new NotReady("the SIM card asks for its PIN, and none is set"));
        if (tries.refused(pin)) {
            throw new NotReady(
                    "the SIM card did not take its PIN, which is not tried again as three wrong ones lock it:"
                            + " set another one, or unlock the card in a phone");
        }
        if (isLastTry(dialogue.ask("AT+CPINR=\"SIM PIN\""))) {
            throw new NotReady("the SIM card has one try for its PIN left, which is left to you: unlock it in a phone");
        }
        tries.trying(pin);
        Answer answer = dialogue.ask("AT+CPIN=\"" + pin + "\"");
        if (Trouble.isBusy(answer)) {
            tries.taken();
        }
        require(answer, "the SIM card did not take its PIN");
        tries.taken();
    }

    /** TS 27.007 clause 8.65, where a modem knows it. */
    private static boolean isLastTry(Answer answer) {
        return answer.values()
                .filter(values -> values.length > 1 && values[1].equals("1"))
                .isPresent();
    }

    private static void require(Answer answer, String otherwise) throws NotReady {
        if (!answer.isOk()) {
            throw new NotReady(otherwise + ": " + Trouble.words(answer));
        }
    }
}
