package yardlight.gateway.feed;

import java.util.Map;
import org.springframework.stereotype.Component;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;
import yardlight.db.feed.Feeds;
import yardlight.escalation.Entry;
import yardlight.escalation.setup.Contact;
import yardlight.gateway.lane.LogBook;

/** Makes the address of a person's calendar and ends it, both of which stand in the log; shows whether there is one. */
@Component
class FeedDesk {

    private final Feeds feeds;
    private final FeedTokens tokens;
    private final LogBook log;

    FeedDesk(Feeds feeds, FeedTokens tokens, LogBook log) {
        this.feeds = feeds;
        this.tokens = tokens;
        this.log = log;
    }

    /** The new address; nobody can say it again. */
    String make(Contact contact, String by) {
        String here = ServletUriComponentsBuilder.fromCurrentContextPath().toUriString();
        String address = tokens.make(contact.id(), by, here);
        log(contact, by, " made an address for the calendar of ");
        return address;
    }

    /** Nothing leads to the calendar any more. */
    void off(Contact contact, String by) {
        if (feeds.remove(contact.id())) {
            log(contact, by, " revoked the address for the calendar of ");
        }
    }

    private void log(Contact contact, String by, String did) {
        log.put(new Entry(Entry.What.LOGIN, Map.of("contact", contact.id(), "person", by), by + did + contact.id()));
    }

    /**
     * @param here the page's own path, to which its forms go
     * @param address that was made just now; else empty
     */
    ModelAndView page(String view, String here, Contact contact, String address) {
        return new ModelAndView(view)
                .addObject("here", here)
                .addObject("id", contact.id())
                .addObject("name", contact.name())
                .addObject("address", address)
                .addObject("made", feeds.of(contact.id()).isPresent());
    }
}
