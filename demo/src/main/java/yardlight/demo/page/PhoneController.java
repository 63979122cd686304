package yardlight.demo.page;

import java.util.List;
import java.util.Map;
import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.server.ResponseStatusException;
import yardlight.demo.cast.Person;
import yardlight.demo.night.Timeline;
import yardlight.demo.page.Shown.PhoneShown;
import yardlight.demo.page.Shown.TextShown;
import yardlight.demo.phone.Text;
import yardlight.demo.stage.Stage;
import yardlight.demo.stage.World;

/** The phones: what is on them, and a reply typed on one. */
@RestController
class PhoneController {

    private final World world;
    private final Timeline timeline;
    private final Stage stage;

    PhoneController(World world, Timeline timeline, Stage stage) {
        this.world = world;
        this.timeline = timeline;
        this.stage = stage;
    }

    @GetMapping("/phones")
    List<PhoneShown> phones() {
        List<Text> texts = world.phones().texts();
        return world.cast().people().stream()
                .map(person -> phone(person, texts))
                .toList();
    }

    private PhoneShown phone(Person person, List<Text> texts) {
        List<TextShown> theirs = texts.stream()
                .filter(text -> text.person().equals(person))
                .map(this::text)
                .toList();
        return new PhoneShown(person.id(), person.name(), person.number(), theirs);
    }

    private TextShown text(Text text) {
        String link = text.link().map(Object::toString).orElse("");
        return new TextShown(text.number(), timeline.time(text.at()), text.path() == Text.Path.MAIL, text.body(), link);
    }

    /** Sends what somebody typed; the answer is the one line that would come back to the phone. */
    @PostMapping("/phones/{person}/reply")
    Map<String, String> reply(@PathVariable String person, @RequestParam String text) {
        Person sender =
                world.cast().person(person).orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND));
        String line = stage.replies().reply(sender.number(), text);
        timeline.addByHand(world.clock().instant(), sender.firstName(), "replies \"" + text + "\": " + line);
        return Map.of("line", line);
    }
}
