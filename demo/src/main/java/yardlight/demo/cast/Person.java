package yardlight.demo.cast;

/**
 * Somebody with a phone.
 *
 * @param id contact of the setup
 * @param name as people say it
 * @param text address at the carrier, which stands for the phone: ten digits, an at sign, the carrier's domain
 * @param mail address of the mail box
 */
public record Person(String id, String name, String text, String mail) {

    public String firstName() {
        return name.split(" ")[0];
    }

    /** The phone's number as a carrier writes it, {@code +15755550101}: country code 1, then the ten digits. */
    public String number() {
        return "+1" + text.substring(0, text.indexOf('@'));
    }
}
