package yardlight.escalation;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Random;
import java.util.UUID;

/** One small breach of each rule of {@link ArchitectureTest}, so that a rule that catches nothing shows. */
final class Offenders {

    private Offenders() {}

    static final class AsksTheClock {
        Instant now() {
            return Instant.now();
        }
    }

    static final class AsksAnotherClock {
        Clock clock() {
            return Clock.systemUTC();
        }
    }

    static final class CountsNanoseconds {
        long now() {
            return System.nanoTime();
        }
    }

    static final class MakesUpAnId {
        String id() {
            return UUID.randomUUID().toString();
        }
    }

    static final class RollsDice {
        int roll(Random dice) {
            return dice.nextInt(6);
        }
    }

    static final class AsksWhereItIs {
        ZoneId zone() {
            return ZoneId.systemDefault();
        }
    }

    static final class ShoutsInAnyLanguage {
        String loud(String text) {
            return text.toUpperCase();
        }
    }

    static final class PrintsInAnyLanguage {
        String level(double feet) {
            return String.format("%.1f", feet);
        }
    }

    static final class RunsBeside {
        void run() {
            new Thread(this::run).start();
        }
    }

    static final class WritesALog {
        void write(System.Logger log) {
            log.log(System.Logger.Level.INFO, "here");
        }
    }

    static final class TalksToTheConsole {
        void talk() {
            System.out.println("here");
        }
    }

    static final class OpensAFile {
        boolean there(Path path) {
            return Files.exists(path);
        }
    }
}
