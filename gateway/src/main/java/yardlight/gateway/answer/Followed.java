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
    private final Tokens tokens;

    Followed(AnswerLinks links, RecentNotices recent, Tokens tokens) {
        this.links = links;
        this.recent = recent;
        this.tokens = tokens;
    }

    /** Empty when there is no such link, or none any more. */
    Optional<AnswerLink> link(String token, Instant now) {
        return Tokens.hash(token)
                .flatMap(hash -> links.byHash(hash)
                        .filter(this::isGood)
                        .or(() -> recent.byHash(hash, now)
                                .map(made -> new AnswerLink(
                                        hash, made.notice(), made.at().plus(Tokens.LIFE), Optional.empty()))));
    }

    /** Its row outlives the key that it was made with; when all links were ended, the row is good for nothing. */
    private boolean isGood(AnswerLink used) {
        Instant made = used.expiresAt().minus(Tokens.LIFE);
        return used.tokenHash().equals(tokens.hashFor(used.notice(), made));
    }

    void use(AnswerLink link, Instant now) {
        links.keep(link.tokenHash(), link.notice(), link.expiresAt());
        links.use(link.tokenHash(), now);
    }
}
