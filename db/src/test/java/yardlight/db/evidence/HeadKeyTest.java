package yardlight.db.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.Signature;
import java.security.spec.PKCS8EncodedKeySpec;
import java.security.spec.X509EncodedKeySpec;
import java.time.Instant;
import java.util.HexFormat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Heads are signed with Ed25519, and the Ed25519 of this Java is that of RFC 8032. */
class HeadKeyTest {

    /** RFC 8410: what stands before the 32 bytes of a key. */
    private static final String SECRET = "302e020100300506032b657004220420";

    private static final String OPEN = "302a300506032b6570032100";

    private static final LogHead HEAD = new LogHead(1, 600, new byte[32], Instant.parse("2026-11-25T08:13:00.123456Z"));

    /** RFC 8032, 7.1, tests 1 to 3: from memory, and recomputed here. */
    @ParameterizedTest
    @CsvSource({
        "9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60,"
                + "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a,'',"
                + "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46b"
                + "d25bf5f0595bbe24655141438e7a100b",
        "4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb,"
                + "3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c,72,"
                + "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c"
                + "387b2eaeb4302aeeb00d291612bb0c00",
        "c5aa8df43f9f837bedb7442f31dcb7b166d38535076f094b85ce3a2e0b4458f7,"
                + "fc51cd8e6218a1a38da47ed00230f0580816ed13ba3303ac5deb911548908025,af82,"
                + "6291d657deec24024827e69c3abe01a30ce548a284743a445e3680d7db5ac3ac18ff9b538d16f290ae67f760984dc659"
                + "4a7c15e9716ed28dc027beceea1ec40a"
    })
    void signs_as_the_published_vectors(String secret, String open, String message, String signed)
            throws GeneralSecurityException {
        HexFormat hex = HexFormat.of();
        var factory = KeyFactory.getInstance("Ed25519");
        var signature = Signature.getInstance("Ed25519");
        signature.initSign(factory.generatePrivate(new PKCS8EncodedKeySpec(hex.parseHex(SECRET + secret))));
        signature.update(hex.parseHex(message));
        assertThat(hex.formatHex(signature.sign())).isEqualTo(signed);

        signature.initVerify(factory.generatePublic(new X509EncodedKeySpec(hex.parseHex(OPEN + open))));
        signature.update(hex.parseHex(message));
        assertThat(signature.verify(hex.parseHex(signed))).isTrue();
    }

    /** RFC 6962, 3.5, laid out by hand. */
    @Test
    void signs_version_kind_milliseconds_size_and_root() {
        assertThat(HexFormat.of().formatHex(HeadKey.signed(HEAD)))
                .isEqualTo("0001" + "000001a211c3e35b" + "0000000000000258" + "00".repeat(32));
    }

    @Test
    void is_the_same_key_when_it_was_kept() throws GeneralSecurityException {
        byte[] kept = HeadKey.fresh();

        assertThat(HeadKey.of(kept).sign(HEAD)).isEqualTo(HeadKey.of(kept).sign(HEAD));
        assertThat(HeadKey.of(kept).open())
                .isNotEqualTo(HeadKey.of(HeadKey.fresh()).open());
        var signature = Signature.getInstance("Ed25519");
        signature.initVerify(KeyFactory.getInstance("Ed25519")
                .generatePublic(new X509EncodedKeySpec(HeadKey.of(kept).open())));
        signature.update(HeadKey.signed(HEAD));
        assertThat(signature.verify(HeadKey.of(kept).sign(HEAD))).isTrue();
    }

    @Test
    void refuses_bytes_that_are_no_key() {
        assertThatThrownBy(() -> HeadKey.of(new byte[] {3, 1, 2, 3, 4})).hasMessage("not the bytes of a key");
        assertThatThrownBy(() -> HeadKey.of(new byte[0])).hasMessage("not the bytes of a key");
    }
}
