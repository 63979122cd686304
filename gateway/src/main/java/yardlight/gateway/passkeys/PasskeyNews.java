package yardlight.gateway.passkeys;

import jakarta.servlet.http.HttpServletRequest;
import org.springframework.stereotype.Component;
import yardlight.gateway.page.PageFact;

/** Tells every page, as {@code passkeys}, whether it can be signed in by one. */
@Component
class PasskeyNews implements PageFact {

    private final PasskeyAddress address;

    PasskeyNews(PasskeyAddress address) {
        this.address = address;
    }

    /**
     * @param here whether they work at the address by which the page was opened
     */
    public record Seen(boolean here) {}

    @Override
    public String name() {
        return "passkeys";
    }

    @Override
    public Seen of(HttpServletRequest request) {
        return new Seen(address.isThere() && request.getServerName().equals(address.host()));
    }
}
