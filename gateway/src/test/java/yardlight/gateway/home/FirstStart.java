package yardlight.gateway.home;

import yardlight.db.TestDatabase;

/** Makes the tables in a process of its own, as a first start does, until somebody kills it. */
final class FirstStart {

    static final String BEGINS = "begins";

    private FirstStart() {}

    public static void main(String[] arguments) {
        System.out.println(BEGINS);
        TestDatabase.valueOf(arguments[0]).migrated(arguments[1]).close();
    }
}
