package yardlight.gateway.page;

import yardlight.escalation.proof.LineHealth;

/** How much of an address is shown to those who may only read: enough to tell it from others, too little to use it. */
public final class Masks {

    private static final String MASK = "***";
    private static final int NUMBER = 8;
    private static final int SHOWN = 4;

    private Masks() {}

    /** {@code ***0101@txt.example} for a number, {@code ***@ranch.example} for a name, {@code ***} for anything else. */
    public static String of(String address) {
        int at = address.lastIndexOf('@');
        String local = at < 0 ? address : address.substring(0, at);
        boolean number = local.matches("[+0-9 ().-]+")
                && local.chars().filter(Character::isDigit).count() >= NUMBER;
        return MASK + (number ? local.substring(local.length() - SHOWN) : "") + (at < 0 ? "" : address.substring(at));
    }

    /** What is known of a line; carriers like to repeat the address in what they say of it. */
    public static LineHealth of(LineHealth line) {
        String address = line.key().address();
        return line.trouble()
                .map(said -> line.troubled(said.at(), said.words().replace(address, of(address))))
                .orElse(line);
    }
}
