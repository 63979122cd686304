package yardlight.gateway.passkeys;

import org.springframework.security.web.webauthn.api.Bytes;
import org.springframework.security.web.webauthn.api.ImmutablePublicKeyCredentialUserEntity;
import org.springframework.security.web.webauthn.api.PublicKeyCredentialUserEntity;
import org.springframework.security.web.webauthn.management.PublicKeyCredentialUserEntityRepository;
import org.springframework.stereotype.Component;
import yardlight.db.passkey.Passkeys;

/** By what authenticators know our logins. */
@Component
class StoredLogins implements PublicKeyCredentialUserEntityRepository {

    private final Passkeys passkeys;

    StoredLogins(Passkeys passkeys) {
        this.passkeys = passkeys;
    }

    @Override
    public PublicKeyCredentialUserEntity findById(Bytes id) {
        return passkeys.login(id.toBase64UrlString())
                .map(login -> entity(login, id))
                .orElse(null);
    }

    @Override
    public PublicKeyCredentialUserEntity findByUsername(String login) {
        return passkeys.handle(login)
                .map(handle -> entity(login, Bytes.fromBase64(handle)))
                .orElse(null);
    }

    @Override
    public void save(PublicKeyCredentialUserEntity login) {
        passkeys.keepHandle(login.getName(), login.getId().toBase64UrlString());
    }

    /** It goes with its login. */
    @Override
    public void delete(Bytes id) {
        throw new UnsupportedOperationException("a handle goes with its login");
    }

    private static PublicKeyCredentialUserEntity entity(String login, Bytes id) {
        return ImmutablePublicKeyCredentialUserEntity.builder()
                .id(id)
                .name(login)
                .displayName(login)
                .build();
    }
}
