package yardlight.gateway.seal;

import java.time.InstantSource;
import org.springframework.stereotype.Component;
import yardlight.db.evidence.HeadKey;
import yardlight.db.evidence.LogHead;
import yardlight.db.evidence.SignedHead;
import yardlight.db.secret.Secrets;

/** The key that signs heads, one for all gateways of a database; made at the first start. */
@Component
public class SigningKey {

    private final HeadKey key;

    SigningKey(Secrets secrets, InstantSource clock) {
        this.key = HeadKey.of(secrets.get(HeadKey.NAME, HeadKey::fresh, clock.instant()));
    }

    public SignedHead sign(LogHead head) {
        return SignedHead.of(head, key);
    }
}
