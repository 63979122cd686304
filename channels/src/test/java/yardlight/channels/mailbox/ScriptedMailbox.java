package yardlight.channels.mailbox;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * An IMAP server of bare sockets with one folder, without IDLE unless told to, that is well-behaved except where it is told otherwise. It knows
 * no mail library, and no more of IMAP than a mailbox of ours asks.
 */
final class ScriptedMailbox implements AutoCloseable {

    enum After {
        STAY,
        HANG_UP,
        /** Nothing more is ever said, but the connection stays. */
        SILENCE,
        /** One byte every 20 ms, without an end. */
        DRIP
    }

    /** @param words with {@code TAG} for the tag of the command */
    record Step(String words, After after) {}

    private final ServerSocket door = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
    private final Map<String, Step> script = new ConcurrentHashMap<>();
    private final Set<Socket> guests = ConcurrentHashMap.newKeySet();
    private final CountDownLatch over = new CountDownLatch(1);
    final List<String> mails = new CopyOnWriteArrayList<>();
    final Set<Integer> seen = ConcurrentHashMap.newKeySet();
    final List<String> commands = new CopyOnWriteArrayList<>();
    final AtomicInteger connections = new AtomicInteger();
    volatile String capabilities = "IMAP4rev1 AUTH=PLAIN";
    /** The number of a mail that is there and cannot be had. */
    volatile int missing;

    /** Comes with the next IDLE, just before the wait begins. */
    final Queue<String> comingBeforeIdle = new ConcurrentLinkedQueue<>();
    /** Whether it tells of what comes then. */
    volatile boolean tellsBeforeIdle;

    volatile String received = "25-Nov-2026 08:21:44 +0000";

    ScriptedMailbox() throws IOException {
        start(this::welcome);
    }

    int port() {
        return door.getLocalPort();
    }

    int guests() {
        return guests.size();
    }

    /** @param verb such as {@code FETCH}; {@code GREETING} is what is said first */
    void does(String verb, String words, After after) {
        script.put(verb, new Step(words, after));
    }

    void behaves(String verb) {
        script.remove(verb);
    }

    @Override
    public void close() throws IOException {
        over.countDown();
        door.close();
        for (Socket guest : guests) {
            guest.close();
        }
    }

    private void welcome() {
        try {
            while (true) {
                Socket guest = door.accept();
                connections.incrementAndGet();
                guests.add(guest);
                start(() -> serve(guest));
            }
        } catch (IOException e) {
            // Closed: the test is over.
        }
    }

    private void serve(Socket guest) {
        try (guest) {
            var in = new BufferedReader(new InputStreamReader(guest.getInputStream(), StandardCharsets.ISO_8859_1));
            OutputStream out = guest.getOutputStream();
            boolean stay = answer("GREETING", "", "* OK ready", out);
            for (String line = stay ? in.readLine() : null; stay && line != null; line = in.readLine()) {
                commands.add(line);
                String[] words = line.split(" ", 3);
                stay = answer(words[1], words[0], usual(words[1], words.length > 2 ? words[2] : "", in, out), out)
                        && !words[1].equals("LOGOUT");
                if (!stay) {
                    return;
                }
            }
        } catch (IOException e) {
            // The other side left.
        } finally {
            guests.remove(guest);
        }
    }

    private String usual(String verb, String rest, BufferedReader in, OutputStream out) throws IOException {
        if (script.containsKey(verb)) {
            return "";
        }
        return switch (verb) {
            case "CAPABILITY" -> "* CAPABILITY " + capabilities + "\r\nTAG OK";
            case "AUTHENTICATE" -> {
                if (!rest.contains(" ")) {
                    say("+ ", out);
                    commands.add("then " + in.readLine());
                }
                yield "TAG OK in";
            }
            case "SELECT" ->
                "* FLAGS (\\Seen)\r\n* " + mails.size() + " EXISTS\r\n* 0 RECENT\r\n* OK [UIDVALIDITY 7] ok\r\n"
                        + "* OK [UIDNEXT " + (mails.size() + 1) + "] ok\r\nTAG OK [READ-WRITE] open";
            case "SEARCH" -> "* " + mails.size() + " EXISTS\r\n* SEARCH" + unseen() + "\r\nTAG OK";
            case "FETCH" -> rest.startsWith(missing + " (BODY") ? "TAG NO cannot be had" : fetched(rest) + "TAG OK";
            case "STORE" -> stored(rest);
            case "IDLE" -> waited(in, out);
            case "NOOP" -> "* " + mails.size() + " EXISTS\r\nTAG OK";
            default -> "TAG OK";
        };
    }

    private String unseen() {
        return IntStream.rangeClosed(1, mails.size())
                .filter(number -> !seen.contains(number))
                .mapToObj(number -> " " + number)
                .collect(Collectors.joining());
    }

    private String fetched(String rest) {
        String[] range = rest.split(" ", 2)[0].split("[:,]");
        int from = Integer.parseInt(range[0]);
        int to = Integer.parseInt(range[range.length - 1]);
        var all = new StringBuilder();
        for (int number = from; number <= to; number++) {
            all.append("* ").append(number).append(" FETCH (");
            if (rest.contains("BODY")) {
                int start = Integer.parseInt(rest.replaceAll(".*<(\\d+)\\..*", "$1"));
                int most = Integer.parseInt(rest.replaceAll(".*<\\d+\\.(\\d+)>.*", "$1"));
                String mail = mails.get(number - 1).replace("\n", "\r\n");
                int begin = Math.min(start, mail.length());
                String part = mail.substring(begin, Math.min(mail.length(), begin + most));
                all.append("BODY[]<" + start + "> {" + part.length() + "}\r\n" + part);
            } else {
                all.append("UID " + number + " INTERNALDATE \"" + received + "\"");
            }
            all.append(")\r\n");
        }
        return all.toString();
    }

    private String stored(String rest) {
        int number = Integer.parseInt(rest.split(" ", 2)[0]);
        seen.add(number);
        return "* " + number + " FETCH (FLAGS (\\Seen))\r\nTAG OK";
    }

    /** Of what comes meanwhile it tells nothing. */
    private String waited(BufferedReader in, OutputStream out) throws IOException {
        String coming = comingBeforeIdle.poll();
        if (coming != null) {
            mails.add(coming);
        }
        if (coming != null && tellsBeforeIdle) {
            say("* " + mails.size() + " EXISTS", out);
        }
        say("+ idling", out);
        commands.add("then " + in.readLine());
        return "TAG OK";
    }

    private boolean answer(String verb, String tag, String usual, OutputStream out) throws IOException {
        Step step = script.getOrDefault(verb, new Step(usual, After.STAY));
        if (!step.words().isEmpty()) {
            say(step.words().replace("TAG", tag), out);
        }
        switch (step.after()) {
            case STAY, HANG_UP -> {}
            case SILENCE -> pause(3_600_000);
            case DRIP -> {
                while (!pause(20)) {
                    out.write('*');
                    out.flush();
                }
            }
        }
        return step.after() == After.STAY;
    }

    private static void say(String words, OutputStream out) throws IOException {
        out.write((words + "\r\n").getBytes(StandardCharsets.ISO_8859_1));
        out.flush();
    }

    private boolean pause(long millis) {
        try {
            return over.await(millis, TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            return true;
        }
    }

    private static void start(Runnable work) {
        Thread thread = new Thread(work, "scripted-mailbox");
        thread.setDaemon(true);
        thread.start();
    }
}
