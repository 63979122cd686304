package yardlight.demo.page;

import java.util.List;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;
import yardlight.demo.gateway.GatewayClock;
import yardlight.demo.gateway.OwnerDoor;
import yardlight.demo.night.Timeline;
import yardlight.demo.page.Shown.NightShown;
import yardlight.demo.stage.Stage;
import yardlight.demo.stage.StageSettings;
import yardlight.demo.stage.World;

/** The clock on the wall, the way to the gateway's own page, and what has happened so far. */
@RestController
class NightController {

    private final Stage stage;
    private final StageSettings settings;
    private final GatewayClock clock;
    private final Timeline timeline;

    NightController(Stage stage, StageSettings settings, World world, Timeline timeline) {
        this.stage = stage;
        this.settings = settings;
        clock = world.clock();
        this.timeline = timeline;
    }

    @GetMapping("/night")
    NightShown night() {
        return new NightShown(
                stage.ready(),
                clock.isSet() ? timeline.time(clock.instant()) : "",
                settings.speed(),
                stage.gatewayAddress().toString(),
                OwnerDoor.LOGIN,
                stage.ownerPassword(),
                timeline.lines().stream()
                        .map(line -> List.of(line.time(), line.who(), line.what()))
                        .toList(),
                stage.lastWords().orElse(List.of()));
    }
}
