package runthrough.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class FingerprintTest {

    /** NIST, FIPS 180-4 example values, SHA-256 of "abc" and of nothing (the latter widely printed; both from memory). */
    @Test
    void isThePublishedOneOfThePublishedTexts() {
        assertThat(Fingerprint.of("abc")).isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
        assertThat(Fingerprint.of(new byte[0]))
                .isEqualTo("e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
    }
}
