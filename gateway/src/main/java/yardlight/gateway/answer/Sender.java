package yardlight.gateway.answer;

import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Line;
import yardlight.escalation.setup.Setup;

/** Who sent a text: the contacts with a line that it can have come from. */
final class Sender {

    /** Shorter numbers say too little: a short code could end like somebody's number. */
    private static final int SHORTEST_NUMBER = 10;

    private final String from;

    Sender(String from) {
        this.from = from.strip().toLowerCase(Locale.ROOT);
    }

    List<Contact> among(Setup setup) {
        return setup.contacts().values().stream()
                .filter(contact -> !addresses(contact).isEmpty())
                .toList();
    }

    /** The addresses of the contact that it can have come from, each once. */
    List<String> addresses(Contact contact) {
        return contact.lines().stream()
                .map(Line::address)
                .filter(this::uses)
                .distinct()
                .toList();
    }

    /** The places of those of a contact's lines that it can have come from. */
    List<Integer> lines(Contact contact) {
        return IntStream.range(0, contact.lines().size())
                .filter(place -> uses(contact.lines().get(place).address()))
                .boxed()
                .toList();
    }

    /** An address is compared as it is; a number by its digits, also one that stands before the at-sign of an address. */
    private boolean uses(String written) {
        String address = written.toLowerCase(Locale.ROOT);
        return address.equals(from) || sameNumber(number(address), number(from));
    }

    private static String number(String address) {
        int at = address.indexOf('@');
        String local = at < 0 ? address : address.substring(0, at);
        return local.matches("[+0-9 ().-]+") ? local.replaceAll("\\D", "") : "";
    }

    /** Also when one is written with the country before it and the other is not. */
    private static boolean sameNumber(String one, String other) {
        String shorter = one.length() < other.length() ? one : other;
        return shorter.length() >= SHORTEST_NUMBER && one.endsWith(shorter) && other.endsWith(shorter);
    }

    @Override
    public String toString() {
        return from;
    }
}
