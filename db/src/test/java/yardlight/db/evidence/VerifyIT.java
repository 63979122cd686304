package yardlight.db.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yardlight.db.TestDatabase;
import yardlight.db.retention.Ages;
import yardlight.db.retention.RetentionForTests;

/** An export that was tampered with is found out, and the line named, by the verifier that people are given. */
class VerifyIT {

    private static final int CHANGES = Integer.getInteger("yardlight.verify.changes", 1_000);
    private static final int LINES = 900;

    @TempDir
    static Path folder;

    private static WrittenLog log;
    private static SignedHead earlier;
    private static List<String> export;
    private static Verifier verifier;

    @BeforeAll
    static void write() throws IOException, ReflectiveOperationException {
        log = new WrittenLog(TestDatabase.H2).with(500, 50);
        earlier = log.head();
        log.with(LINES - 500, 50);
        export = log.export();
        verifier = new Verifier(folder);
    }

    @AfterAll
    static void close() {
        log.close();
    }

    @Test
    void passes_what_nobody_touched() throws Exception {
        assertThat(verifier.check(String.join("\n", export), earlier))
                .singleElement()
                .asString()
                .startsWith("OK: lines 1 to 900 are whole and unchanged, as of 2026-11-25T08:13:00.8")
                .contains("the first 500 are those of the earlier head");
    }

    /** A single change of each kind, a thousand times over: a byte, a line gone, doubled or moved, a time, the tail. */
    @Test
    void finds_every_single_change_and_names_the_line() throws Exception {
        var random = new Random(8);
        var found = new TreeMap<String, Integer>();
        for (int i = 0; i < CHANGES; i++) {
            Tampering tampering = Tampering.draw(random, export);
            List<String> said = verifier.check(tampering.export(), earlier);

            assertThat(said.get(0)).as(tampering.what()).startsWith("WRONG (line ");
            assertThat(said)
                    .as(tampering.what())
                    .anySatisfy(fault -> assertThat(fault).contains(tampering.named()));
            found.merge(tampering.kind(), 1, Integer::sum);
        }
        System.out.println("single changes found: " + found);
        assertThat(found.keySet()).hasSize(6);
    }

    /** Somebody who makes the hashes of the changed file fit again is given away by the earlier head. */
    @Test
    void finds_a_log_that_was_written_anew_by_the_head_that_was_given_out_before() throws Exception {
        try (WrittenLog another = new WrittenLog(TestDatabase.H2).with(LINES, 40)) {
            List<String> said = verifier.check(String.join("\n", another.export()), earlier);

            assertThat(said)
                    .anySatisfy(fault -> assertThat(fault)
                            .contains(
                                    "among lines 1 to 500 something was changed after the earlier head was given out"));
        }
    }

    @Test
    void finds_an_export_that_is_older_than_the_head_that_it_is_held_against() throws Exception {
        try (WrittenLog shorter = new WrittenLog(TestDatabase.H2).with(400, 50)) {
            assertThat(verifier.check(String.join("\n", shorter.export()), earlier)
                            .get(0))
                    .contains("lines were removed from the end: the earlier head has 500 lines, this one 400");
        }
    }

    @Test
    void passes_a_log_of_which_old_lines_were_let_go_and_says_so() throws Exception {
        try (WrittenLog old = new WrittenLog(TestDatabase.H2).with(700, 50)) {
            SignedHead head = old.head();
            RetentionForTests.sweep(
                    old.source, WrittenLog.NOW.plus(Ages.USUAL.record()).plusMillis(600));
            List<String> cut = old.export();

            assertThat(cut.get(2)).startsWith("cut 1 256 ");
            assertThat(cut.get(3)).startsWith("cut 257 512 ");
            assertThat(cut.get(4)).startsWith("513 ");
            assertThat(verifier.check(String.join("\n", cut), head).get(0))
                    .startsWith("OK: lines 513 to 700 are whole and unchanged")
                    .contains("of those up to 512 only the hashes are kept");
            assertThat(verifier.check(String.join("\n", cut), earlier).get(0)).contains("cannot tell");
        }
    }

    @Test
    void says_so_when_there_is_hardly_a_file_at_all() throws Exception {
        assertThat(verifier.check("", earlier)).singleElement().asString().contains("the file ends before its head");
        assertThat(verifier.check("yardlight log 1\n", earlier).get(0)).contains("the file ends before its head");
    }

    /** Lines may not be hidden behind a hash anywhere else. */
    @Test
    void finds_lines_for_which_only_their_hash_was_put_in() throws Exception {
        var hidden = new ArrayList<>(export);
        int sum = indexOf("sum 257 512");
        String hash = hidden.get(sum).split(" ")[3];
        hidden.subList(sum - 256, sum + 1).clear();
        hidden.add(sum - 256, "cut 257 512 " + hash);

        assertThat(verifier.check(String.join("\n", hidden), earlier).get(0))
                .contains("line 257 should stand here, not the hash of 257 to 512");
    }

    /** As a person does it: with the command of the manual, in a folder with nothing but the three files. */
    @Test
    void runs_as_the_manual_says() throws Exception {
        Path alone = Files.createDirectory(folder.resolve("alone"));
        Files.copy(Verifier.SOURCE, alone.resolve("Verify.java"));
        Files.writeString(alone.resolve("log.txt"), String.join("\n", export), StandardCharsets.UTF_8);
        Files.writeString(alone.resolve("head.json"), earlier.json() + "\n");

        assertThat(run(alone)).isEqualTo(Map.entry(0, "OK"));

        Files.writeString(
                alone.resolve("log.txt"),
                String.join("\n", export).replace("\"notice\":\"n-300\"", "\"notice\":\"n-301\""),
                StandardCharsets.UTF_8);
        assertThat(run(alone)).isEqualTo(Map.entry(1, "WRONG"));
    }

    private static Map.Entry<Integer, String> run(Path folder) throws IOException, InterruptedException {
        Process java = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "Verify.java",
                        "log.txt",
                        "head.json")
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .start();
        String said = new String(java.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(java.waitFor(Duration.ofMinutes(1).toSeconds(), TimeUnit.SECONDS))
                .isTrue();
        return Map.entry(java.exitValue(), said.split("[: ]")[0]);
    }

    private static int indexOf(String beginning) {
        for (int i = 0; i < export.size(); i++) {
            if (export.get(i).startsWith(beginning)) {
                return i;
            }
        }
        throw new IllegalStateException("no line begins with " + beginning);
    }
}
