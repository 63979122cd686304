package yardlight.demo;

import java.io.UncheckedIOException;
import java.util.List;
import org.springframework.boot.ApplicationArguments;
import org.springframework.boot.ApplicationRunner;
import org.springframework.boot.ExitCodeGenerator;
import org.springframework.boot.web.server.context.WebServerApplicationContext;
import org.springframework.stereotype.Component;
import yardlight.demo.gateway.OwnerDoor;
import yardlight.demo.night.Night;
import yardlight.demo.night.Outcome;
import yardlight.demo.stage.Stage;
import yardlight.demo.stage.StageSettings;

/** The demo from its first line to its last: sets the stage, plays the night, says how it went, stays or leaves. */
@Component
class DemoRun implements ApplicationRunner, ExitCodeGenerator {

    private final StageSettings settings;
    private final Stage stage;
    private final Night night;
    private final WebServerApplicationContext page;
    private volatile int exitCode;

    DemoRun(StageSettings settings, Stage stage, Night night, WebServerApplicationContext page) {
        this.settings = settings;
        this.stage = stage;
        this.night = night;
        this.page = page;
    }

    @Override
    public void run(ApplicationArguments arguments) throws InterruptedException {
        Outcome outcome = play();
        exitCode = outcome.asWritten() ? 0 : 1;
        say("");
        say(outcome.summary());
        say(outcome.asWritten() ? "The night went as written." : "The night did not go as written:");
        outcome.reasons().forEach(reason -> say("  - " + reason));
        if (!leaves()) {
            say("Everything stays up for playing; Ctrl-C ends it.");
        }
    }

    private Outcome play() throws InterruptedException {
        say("");
        say("Made-up people and places. Not a safety system; hard-wired shutdowns stay.");
        say("Phones and sites: http://localhost:" + page.getWebServer().getPort() + "   (the gateway is starting)");
        try {
            stage.open();
            say("The gateway:      " + stage.gatewayAddress() + "   (login " + OwnerDoor.LOGIN + ", password "
                    + stage.ownerPassword() + ")");
            say("One night, " + settings.speed() + " times as fast as real; local time of the sites:");
            say("");
            return night.play(stage.owner());
        } catch (UncheckedIOException e) {
            return brokenOff("the gateway does not answer: " + e.getCause());
        } catch (IllegalStateException e) {
            return brokenOff(e.getMessage());
        }
    }

    private static Outcome brokenOff(String reason) {
        return new Outcome("The night broke off.", List.of(reason));
    }

    /** Whether the demo ends now: it was told to, or there is nothing to play with. */
    boolean leaves() {
        return settings.exitAfterNight() || !stage.ready();
    }

    private static void say(String line) {
        System.out.println(line);
    }

    @Override
    public int getExitCode() {
        return exitCode;
    }
}
