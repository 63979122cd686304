package yardlight.gateway.passkeys;

import jakarta.servlet.http.HttpServletRequest;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ModelAttribute;

/** Tells every page, as {@code passkeys}, whether it can be signed in by one. */
@ControllerAdvice
class PasskeyNews {

    private final PasskeyAddress address;

    PasskeyNews(PasskeyAddress address) {
        this.address = address;
    }

    /**
     * @param here whether they work at the address by which the page was opened
     */
    public record Seen(boolean here) {}

    @ModelAttribute("passkeys")
    Seen here(HttpServletRequest request) {
        return new Seen(address.isThere() && request.getServerName().equals(address.host()));
    }
}
