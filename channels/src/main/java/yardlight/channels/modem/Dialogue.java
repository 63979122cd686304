package yardlight.channels.modem;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * One command at a time, and its answer. What the modem says in between that is no part of the answer, such as {@code RING},
 * {@code +CMTI} or a line of its maker's own, is kept aside; so is what it repeats of the command. For one thread.
 */
final class Dialogue {

    /** In the middle of a text the first octet ends it; else the second ends what the modem took for a command. */
    private static final byte[] ABANDON = {0x1B, '\r'};

    private static final byte[] SEND = {0x1A};

    private static final Pattern HEXADECIMAL = Pattern.compile("(?:[0-9A-Fa-f]{2}){8,}");
    private static final Pattern COMMAND = Pattern.compile("AT(\\+[A-Z]+).*");
    private static final Pattern CONTROL = Pattern.compile("\\p{Cc}");
    private static final List<String> WITH_A_MESSAGE = List.of("+CDS:", "+CMT:", "+CBM:");

    private static final int MOST_ASIDE = 200;

    private final SerialLine port;
    private final Lines lines;
    private final Duration patience;
    private final Deque<Unasked> aside = new ArrayDeque<>();
    private String said = "";
    private Optional<String> broken = Optional.empty();

    /**
     * Something that the modem says by itself.
     *
     * @param message in hexadecimal, of a line that has one; else empty
     */
    record Unasked(String line, String message) {}

    /** @param patience for an answer that needs nobody but the modem */
    Dialogue(SerialLine port, Duration patience) {
        this.port = port;
        this.lines = new Lines(port);
        this.patience = patience;
    }

    /** Ends whatever the modem was in the middle of: a text that nobody finished, an answer that nobody read. */
    void startAnew() throws Gone {
        write(ABANDON);
        lines.skip(System.nanoTime() + patience.toNanos());
    }

    /** Asks and waits. A {@link Gone} if no answer comes. */
    Answer ask(String command) throws Gone {
        return ask(command, patience);
    }

    Answer ask(String command, Duration limit) throws Gone {
        say(command);
        Answer answer = answer(prefix(command), limit)
                .orElseThrow(() -> new Gone("the modem does not answer within " + seconds(limit)));
        if (command.endsWith("?") && answer.isOk() && answer.lines().isEmpty()) {
            // A late answer to something else; from now on each would be taken for the next one's.
            throw new Gone("the modem answers something else than it was asked");
        }
        return answer;
    }

    /**
     * Announces a text (clause 3.5.1).
     *
     * @param length in octets, without the service centre's address
     * @return empty if the modem waits for the text, else why not
     */
    Optional<Answer> announce(int length) throws Gone {
        say("AT+CMGS=" + length);
        long end = System.nanoTime() + patience.toNanos();
        while (true) {
            String line = lines.next(end).orElseThrow(() -> new Gone("the modem does not ask for the text"));
            if (line.equals(Lines.PROMPT)) {
                return Optional.empty();
            }
            if (Answer.isResult(line)) {
                var answer = new Answer(List.of(), line);
                if (answer.isOk()) {
                    throw new Gone("the modem answers something else than it was asked");
                }
                return Optional.of(answer);
            }
            keepAside(line);
        }
    }

    /** Writes the text that was announced. Until this has come back, the modem cannot have sent it. */
    void text(String message) throws Gone {
        said = message;
        write(message.getBytes(StandardCharsets.US_ASCII));
        write(SEND);
    }

    /** What came of it: empty if nothing was heard by then. */
    Optional<Answer> sent(Duration limit) throws Gone {
        return answer("+CMGS:", limit);
    }

    /**
     * What the modem said by itself since this was last asked, oldest first. Waits for nothing: what has its second line still
     * to come is left for the next time.
     */
    List<Unasked> unasked() throws Gone {
        for (Optional<String> line = lines.next(); line.isPresent(); line = lines.next()) {
            keepAside(line.get());
        }
        Optional<Unasked> begun = awaitsMessage() ? Optional.of(aside.removeLast()) : Optional.empty();
        List<Unasked> all = List.copyOf(aside);
        aside.clear();
        begun.ifPresent(aside::add);
        return all;
    }

    /** This dialogue can no longer be trusted: an answer may come to what nobody waits for any more. */
    void breakOff(String why) {
        broken = Optional.of(why);
    }

    void requireWhole() throws Gone {
        if (broken.isPresent()) {
            throw new Gone(broken.get());
        }
    }

    private void say(String command) throws Gone {
        said = command;
        write((command + "\r").getBytes(StandardCharsets.US_ASCII));
    }

    private void write(byte[] octets) throws Gone {
        port.write(octets);
    }

    private Optional<Answer> answer(String prefix, Duration limit) throws Gone {
        List<String> answer = new ArrayList<>();
        long end = System.nanoTime() + limit.toNanos();
        while (true) {
            Optional<String> next = lines.next(end);
            if (next.isEmpty()) {
                return Optional.empty();
            }
            String line = next.get();
            if (Answer.isResult(line)) {
                return Optional.of(new Answer(answer, line));
            }
            boolean follows = !answer.isEmpty() && isMessage(line) && !awaitsMessage();
            if (!prefix.isEmpty() && line.startsWith(prefix) || follows) {
                answer.add(line);
            } else {
                keepAside(line);
            }
        }
    }

    private void keepAside(String line) {
        if (CONTROL.matcher(line).replaceAll("").equalsIgnoreCase(said) || line.equals(Lines.PROMPT)) {
            return;
        }
        if (isMessage(line) && awaitsMessage()) {
            aside.add(new Unasked(aside.removeLast().line(), line));
        } else {
            aside.add(new Unasked(line, ""));
        }
        if (aside.size() > MOST_ASIDE) {
            aside.remove();
        }
    }

    /** Whether the last thing that it said by itself has its second line still to come. */
    private boolean awaitsMessage() {
        Unasked last = aside.peekLast();
        return last != null
                && last.message().isEmpty()
                && WITH_A_MESSAGE.stream().anyMatch(last.line()::startsWith);
    }

    private static boolean isMessage(String line) {
        return HEXADECIMAL.matcher(line).matches();
    }

    /** How the lines of an answer begin; empty for a command whose answer has none. */
    private static String prefix(String command) {
        var name = COMMAND.matcher(command);
        return name.matches() ? name.group(1) + ":" : "";
    }

    private static String seconds(Duration length) {
        return length.toMillis() % 1000 == 0 ? length.toSeconds() + " s" : length.toMillis() + " ms";
    }
}
