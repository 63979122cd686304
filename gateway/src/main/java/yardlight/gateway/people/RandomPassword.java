package yardlight.gateway.people;

import java.util.random.RandomGenerator;

/** A password that can be read out over the phone: four groups of five, without letters that look alike. About 98 bits. */
public final class RandomPassword {

    private static final String LETTERS = "abcdefghjkmnpqrstuvwxyz23456789";
    private static final int GROUPS = 4;
    private static final int GROUP = 5;

    private RandomPassword() {}

    public static String fresh(RandomGenerator random) {
        var password = new StringBuilder();
        for (int i = 0; i < GROUPS * GROUP; i++) {
            if (i > 0 && i % GROUP == 0) {
                password.append('-');
            }
            password.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
        }
        return password.toString();
    }
}
