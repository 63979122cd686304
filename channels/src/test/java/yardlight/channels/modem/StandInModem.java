package yardlight.channels.modem;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import yardlight.channels.modem.Pdus.Submitted;

/**
 * A modem at the other end of a {@link Pty}, written from the standards (V.250, 3GPP TS 27.005 and 27.007), with the faults of
 * real ones. Its port has one name, however often it is pulled out and put in again.
 */
public final class StandInModem implements AutoCloseable {

    /** What it does where a text is at stake. */
    public enum Does {
        ANSWER,
        FALL_SILENT,
        /** The port is gone, and back at once. */
        VANISH
    }

    /** 2026-11-25T09:13:00Z. */
    static final String NOW = "62115290310000";

    /** In order. */
    final List<Submitted> taken = new CopyOnWriteArrayList<>();

    final List<String> commands = new CopyOnWriteArrayList<>();
    /** Said in the middle of every answer. */
    final List<String> noise = new CopyOnWriteArrayList<>();
    /** Commands that it does not know. */
    final Set<String> unknown = ConcurrentHashMap.newKeySet();

    volatile Does announced = Does.ANSWER;
    volatile Does text = Does.ANSWER;
    /** Instead of taking a text, such as {@code +CMS ERROR: 38}; empty takes it. */
    volatile String refusal = "";
    /** At the end of its answer to a text. */
    volatile String words = "";

    volatile boolean deaf;
    volatile boolean tells = true;
    public volatile int registration = 1;
    volatile int lteRegistration = -1;
    volatile int level = 8;
    /** Of the next message. */
    volatile int reference = 1;

    final SimCard card = new SimCard();

    private final Plug plug = new Plug();
    private final StringBuilder begun = new StringBuilder();
    private boolean echo;
    private boolean pduMode;
    private int reports;
    private boolean awaitsText;

    /** One that is plugged in. */
    public StandInModem() throws IOException {
        plugIn();
    }

    /** Whether there can be one on this machine; if not, says so. */
    public static boolean isPossible() {
        return Pty.missing().isEmpty();
    }

    public String port() {
        return plug.name();
    }

    /** It starts anew, with a port that has another name behind the link. */
    synchronized void plugIn() {
        restart();
        card.putIn();
        plug.putIn(this::hear);
    }

    synchronized void pullOut() {
        plug.pullOut();
    }

    /** It forgets what it was told, and says nothing of it; the port stays. */
    synchronized void restart() {
        echo = true;
        pduMode = false;
        reports = 0;
        awaitsText = false;
        begun.setLength(0);
    }

    /** It repeats what it is told. */
    synchronized void echo() {
        echo = true;
    }

    @Override
    public synchronized void close() throws IOException {
        plug.remove();
    }

    /** A text that comes in. Whether there was room for it. */
    public boolean brings(String from, String words) {
        return keeps(Pdus.delivered(from, words, NOW), "CMTI");
    }

    boolean keeps(String pdu, String news) {
        Optional<Integer> index = card.keep(pdu);
        if (index.isPresent() && tells) {
            say("+" + news + ": \"SM\"," + index.get());
        }
        return index.isPresent();
    }

    /** The network says that a part has reached its phone; they are counted from 0. */
    public void delivers(int part) {
        reports(part + 1, taken.get(part).address(), 0);
    }

    /** The network says what became of a text. */
    void reports(int number, String address, int status) {
        String pdu = Pdus.reported(number, address, status, NOW);
        int how;
        synchronized (this) {
            how = reports;
        }
        if (how == 2) {
            keeps(pdu, "CDSI");
        } else if (how == 1) {
            say("+CDS: " + Pdus.length(pdu), pdu);
        }
    }

    /** Texts that went out, their parts put together; those that are still without their last are left out. */
    public List<String> texts() {
        List<String> whole = new ArrayList<>();
        StringBuilder begun = new StringBuilder();
        for (Submitted part : taken) {
            begun.append(part.text());
            if (part.isLast()) {
                whole.add(begun.toString());
                begun.setLength(0);
            }
        }
        return whole;
    }

    /** Whatever it says by itself. */
    synchronized void say(String... lines) {
        for (String line : lines) {
            plug.write("\r\n" + line + "\r\n");
        }
    }

    private synchronized void hear(char octet) {
        if (deaf) {
            return;
        }
        if (echo) {
            plug.write(String.valueOf(octet));
        }
        if (octet == 0x1B) {
            awaitsText = false;
            begun.setLength(0);
        } else if (octet == (awaitsText ? 0x1A : '\r')) {
            String line = begun.toString();
            begun.setLength(0);
            if (awaitsText) {
                awaitsText = false;
                text(line);
            } else if (!line.isEmpty()) {
                commands.add(line);
                obey(line);
            }
        } else {
            begun.append(octet);
        }
    }

    private void obey(String command) {
        if (unknown.stream().anyMatch(command::startsWith)) {
            say("ERROR");
        } else if (command.startsWith("ATE0")) {
            echo = false;
            ok();
        } else if (command.startsWith("AT+CPIN")) {
            say(card.answer(command));
        } else if (!card.isOpen() && command.matches("AT\\+(CM|CP|CN|CR).*") && !command.contains("CMEE")) {
            say("+CMS ERROR: 311");
        } else if (command.startsWith("AT+CMGS=")) {
            announced();
        } else {
            settings(command);
        }
    }

    private void settings(String command) {
        switch (command) {
            case "AT+CREG?" -> answer("+CREG: 0," + registration);
            case "AT+CEREG?" -> answer("+CEREG: 0," + (lteRegistration < 0 ? registration : lteRegistration));
            case "AT+CSQ" -> answer("+CSQ: " + level + ",99");
            case "AT+CMGL=4" -> list();
            case "AT+CMGF=0" -> {
                pduMode = true;
                ok();
            }
            default -> {
                if (command.startsWith("AT+CNMI=")) {
                    String[] values = command.substring(8).split(",");
                    reports = values.length > 3 ? Integer.parseInt(values[3]) : 0;
                } else if (command.startsWith("AT+CMGD=")) {
                    card.remove(Integer.parseInt(command.substring(8)));
                }
                ok();
            }
        }
    }

    private void list() {
        card.all().forEach((index, pdu) -> {
            say("+CMGL: " + index + ",0,," + Pdus.length(pdu));
            say(noise.toArray(String[]::new));
            say(pdu);
        });
        ok();
    }

    private void announced() {
        switch (announced) {
            case ANSWER -> {
                awaitsText = true;
                say(noise.toArray(String[]::new));
                plug.write("\r\n> ");
            }
            case VANISH -> plugIn();
            case FALL_SILENT -> {}
        }
    }

    private void text(String pdu) {
        if (!pduMode) {
            say("+CMS ERROR: 304");
            return;
        }
        if (!refusal.isEmpty()) {
            say(refusal + (words.isEmpty() ? "" : ", " + words));
            return;
        }
        taken.add(Submitted.of(pdu));
        switch (text) {
            case ANSWER -> {
                say(noise.toArray(String[]::new));
                answer("+CMGS: " + (reference++ & 0xFF) + (words.isEmpty() ? "" : "," + words));
            }
            case VANISH -> plugIn();
            case FALL_SILENT -> {}
        }
    }

    private void answer(String line) {
        say(line);
        say(noise.toArray(String[]::new));
        ok();
    }

    private void ok() {
        say("OK");
    }
}
