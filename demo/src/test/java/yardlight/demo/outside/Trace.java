package yardlight.demo.outside;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What strace writes down of some processes and all their threads, in the order in which it happened on this machine. A
 * call has a beginning and an end, since others come in between.
 */
final class Trace implements AutoCloseable {

    private static final String CALLS = "trace=fsync,fdatasync,pwrite64,pwritev,write,sendto,recvfrom,read";
    private static final Pattern LINE = Pattern.compile("(\\d+) +(?:<\\.\\.\\. (\\w+) resumed>|(\\w+)\\()(.*)");

    /**
     * @param begin line at which it began
     * @param end line at which it was back
     * @param what its arguments and its result, files and sockets by name
     */
    record Call(String thread, String name, int begin, int end, String what) {

        boolean syncs() {
            return (name.equals("fsync") || name.equals("fdatasync")) && what.endsWith("= 0");
        }

        boolean writes() {
            return name.startsWith("pwrite") || name.equals("write");
        }
    }

    private final Path output;
    private final Process strace;

    private Trace(Path output, Process strace) {
        this.output = output;
        this.strace = strace;
    }

    /** Why it cannot be done on this machine; empty if it can. */
    static String missing() throws IOException, InterruptedException {
        Process probe;
        try {
            probe = new ProcessBuilder("strace", "-o", "/dev/null", "true")
                    .redirectErrorStream(true)
                    .start();
        } catch (IOException e) {
            return "strace is not installed";
        }
        probe.getInputStream().readAllBytes();
        boolean ours =
                ProcessHandle.current().info().user().filter("root"::equals).isPresent();
        Path scope = Path.of("/proc/sys/kernel/yama/ptrace_scope");
        boolean open = !Files.exists(scope) || Files.readString(scope).strip().equals("0");
        if (probe.waitFor() != 0) {
            return "strace must not trace here";
        }
        return ours || open ? "" : "a running process may only be traced by root here (kernel.yama.ptrace_scope)";
    }

    /** Attaches to these processes; comes back when all of them are watched. */
    static Trace of(Collection<Long> processes) throws IOException {
        Path output = Files.createTempFile(Path.of("target").toAbsolutePath(), "yardlight-", ".strace");
        var command = new ArrayList<>(List.of("strace", "-f", "-yy", "-s", "64", "-e", CALLS, "-o", output.toString()));
        processes.forEach(process -> command.addAll(List.of("-p", process.toString())));
        Process strace = new ProcessBuilder(command).redirectErrorStream(true).start();
        var said = strace.inputReader();
        int attached = 0;
        while (attached < processes.size()) {
            String line = said.readLine();
            if (line == null) {
                throw new IOException("strace ended before it had attached");
            }
            attached += line.contains(" attached") ? 1 : 0;
        }
        return new Trace(output, strace);
    }

    /** Lets go and tells all that was seen. */
    List<Call> calls() throws IOException, InterruptedException {
        close();
        return read(Files.readAllLines(output));
    }

    static List<Call> read(List<String> lines) {
        var calls = new ArrayList<Call>();
        Map<String, Integer> open = new HashMap<>();
        Map<String, String> begun = new HashMap<>();
        for (int number = 0; number < lines.size(); number++) {
            Matcher line = LINE.matcher(lines.get(number));
            if (!line.matches()) {
                continue;
            }
            String thread = line.group(1);
            String what = line.group(4);
            if (line.group(2) == null && what.endsWith("<unfinished ...>")) {
                open.put(thread, number);
                begun.put(thread, what.replace("<unfinished ...>", ""));
            } else if (line.group(2) == null) {
                calls.add(new Call(thread, line.group(3), number, number, what));
            } else if (open.containsKey(thread)) {
                calls.add(new Call(thread, line.group(2), open.remove(thread), number, begun.remove(thread) + what));
            }
        }
        return calls;
    }

    /** An interrupted strace lets its processes go on as if nothing had been. */
    @Override
    public void close() {
        strace.destroy();
        try {
            if (!strace.waitFor(20, TimeUnit.SECONDS)) {
                strace.destroyForcibly();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
