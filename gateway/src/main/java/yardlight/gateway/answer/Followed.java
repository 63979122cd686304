package yardlight.gateway.answer;

import java.time.Instant;
import java.util.Optional;
import org.springframework.stereotype.Component;
import yardlight.db.link.AnswerLink;
import yardlight.db.link.AnswerLinks;
import yardlight.gateway.link.Tokens;

/**
 * Finds what a link stands for. A link needs no row of its own until it is used: its token is derived from the notice,
 * so it is enough to derive those of the last days again and to compare.
 */
@Component
class Followed {

    private final AnswerLinks links;
    private final RecentNotices recent;

    Followed(AnswerLinks links, RecentNotices recent) {
        this.links = links;
        this.recent = recent;
    }

    /** Empty when there is no such link, or none any more. */
    Optional<AnswerLink> link(String token, Instant now) {
        return Tokens.hash(token)
                .flatMap(hash -> links.byHash(hash)
                        .or(() -> recent.byHash(hash, now)
                                .map(made -> new AnswerLink(
                                        hash, made.notice(), made.at().plus(Tokens.LIFE), Optional.empty()))));
    }

    void use(AnswerLink link, Instant now) {
        links.keep(link.tokenHash(), link.notice(), link.expiresAt());
        links.use(link.tokenHash(), now);
    }
}
