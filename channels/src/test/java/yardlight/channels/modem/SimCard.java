package yardlight.channels.modem;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The SIM card in the {@link StandInModem}: room for ten messages, and a PIN if it has one. */
final class SimCard {

    private static final int ROOM = 10;

    volatile Optional<String> pin = Optional.empty();
    volatile int pinTries = 3;

    private final Map<Integer, String> messages = new TreeMap<>();
    private boolean given;

    /** It asks for its PIN again. */
    synchronized void putIn() {
        given = false;
    }

    synchronized boolean isOpen() {
        return pin.isEmpty() || given;
    }

    /** To the commands that begin with {@code AT+CPIN}: TS 27.007 clauses 8.3 and 8.65. After three wrong ones it wants its PUK. */
    synchronized String[] answer(String command) {
        if (command.startsWith("AT+CPIN?")) {
            String state = isOpen() ? "READY" : pinTries > 0 ? "SIM PIN" : "SIM PUK";
            return new String[] {"+CPIN: " + state, "OK"};
        }
        if (command.startsWith("AT+CPINR")) {
            return new String[] {"+CPINR: SIM PIN," + pinTries + ",3", "OK"};
        }
        if (command.equals("AT+CPIN=\"" + pin.orElse("") + "\"")) {
            given = true;
            pinTries = 3;
            return new String[] {"OK"};
        }
        pinTries--;
        return new String[] {"+CME ERROR: 16"};
    }

    /** Where it is kept; empty if there is no room. */
    synchronized Optional<Integer> keep(String pdu) {
        for (int index = 1; index <= ROOM; index++) {
            if (messages.putIfAbsent(index, pdu) == null) {
                return Optional.of(index);
            }
        }
        return Optional.empty();
    }

    synchronized Map<Integer, String> all() {
        return new TreeMap<>(messages);
    }

    synchronized void remove(int index) {
        messages.remove(index);
    }

    synchronized int size() {
        return messages.size();
    }
}
