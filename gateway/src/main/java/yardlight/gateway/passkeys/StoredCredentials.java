package yardlight.gateway.passkeys;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.security.web.webauthn.api.AuthenticatorTransport;
import org.springframework.security.web.webauthn.api.Bytes;
import org.springframework.security.web.webauthn.api.CredentialRecord;
import org.springframework.security.web.webauthn.api.ImmutableCredentialRecord;
import org.springframework.security.web.webauthn.api.ImmutablePublicKeyCose;
import org.springframework.security.web.webauthn.api.PublicKeyCredentialType;
import org.springframework.security.web.webauthn.management.UserCredentialRepository;
import org.springframework.stereotype.Component;
import yardlight.db.passkey.Passkey;
import yardlight.db.passkey.Passkeys;
import yardlight.gateway.people.DoorLog;

/** Keeps passkeys for the library that checks them. A new one is a line in the log. */
@Component
class StoredCredentials implements UserCredentialRepository {

    private static final int LONGEST_LABEL = 100;

    private final Passkeys passkeys;
    private final DoorLog log;

    StoredCredentials(Passkeys passkeys, DoorLog log) {
        this.passkeys = passkeys;
        this.log = log;
    }

    /** Somebody removes theirs by {@link PasskeysPage}. */
    @Override
    public void delete(Bytes id) {
        throw new UnsupportedOperationException("a passkey is removed on the page of its owner");
    }

    @Override
    public void save(CredentialRecord credential) {
        Passkey passkey = passkey(credential);
        boolean fresh = passkeys.byId(passkey.id()).isEmpty();
        passkeys.keep(passkey);
        if (fresh) {
            String login = passkeys.login(passkey.handle()).orElse("");
            log.say(login, login + " added a passkey");
        }
    }

    @Override
    public CredentialRecord findByCredentialId(Bytes id) {
        return passkeys.byId(id.toBase64UrlString())
                .map(StoredCredentials::credential)
                .orElse(null);
    }

    @Override
    public List<CredentialRecord> findByUserId(Bytes handle) {
        return passkeys.of(handle.toBase64UrlString()).stream()
                .map(StoredCredentials::credential)
                .toList();
    }

    private static Passkey passkey(CredentialRecord credential) {
        String label =
                credential.getLabel() == null ? "" : credential.getLabel().strip();
        return new Passkey(
                credential.getCredentialId().toBase64UrlString(),
                credential.getUserEntityUserId().toBase64UrlString(),
                label.substring(0, Math.min(LONGEST_LABEL, label.length())),
                credential.getPublicKey().getBytes(),
                credential.getSignatureCount(),
                credential.isUvInitialized(),
                credential.getTransports().stream()
                        .map(AuthenticatorTransport::getValue)
                        .sorted()
                        .collect(Collectors.joining(",")),
                credential.isBackupEligible(),
                credential.isBackupState(),
                bytes(credential.getAttestationObject()),
                bytes(credential.getAttestationClientDataJSON()),
                credential.getCreated(),
                credential.getLastUsed());
    }

    private static CredentialRecord credential(Passkey passkey) {
        Set<AuthenticatorTransport> transports = Stream.of(passkey.transports().split(","))
                .filter(word -> !word.isEmpty())
                .map(AuthenticatorTransport::valueOf)
                .collect(Collectors.toSet());
        return ImmutableCredentialRecord.builder()
                .credentialType(PublicKeyCredentialType.PUBLIC_KEY)
                .credentialId(Bytes.fromBase64(passkey.id()))
                .userEntityUserId(Bytes.fromBase64(passkey.handle()))
                .label(passkey.label())
                .publicKey(new ImmutablePublicKeyCose(passkey.publicKey()))
                .signatureCount(passkey.uses())
                .uvInitialized(passkey.verified())
                .transports(transports)
                .backupEligible(passkey.mayBeCopied())
                .backupState(passkey.isCopied())
                .attestationObject(new Bytes(passkey.attestation()))
                .attestationClientDataJSON(new Bytes(passkey.clientData()))
                .created(passkey.createdAt())
                .lastUsed(passkey.lastUsedAt())
                .build();
    }

    private static byte[] bytes(Bytes given) {
        return given == null ? new byte[0] : given.getBytes();
    }
}
