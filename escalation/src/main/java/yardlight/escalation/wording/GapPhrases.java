package yardlight.escalation.wording;

import yardlight.escalation.alarm.Priority;

/** What an all's-well says of hours in which nobody is called at once, in one language. */
enum GapPhrases {
    ENGLISH {
        @Override
        String priority(Priority priority) {
            return priority.word();
        }

        @Override
        String uncovered(String priorities, String site, String when, int more) {
            String others = more == 0 ? "" : more == 1 ? ", 1 more gap" : ", " + more + " more gaps";
            return "Nobody hears at once of " + priorities + " at " + site + " " + when + others;
        }

        @Override
        String until(String time) {
            return "until " + time;
        }

        @Override
        String inDays(long days) {
            return "in " + days + " days";
        }

        @Override
        String ahead(int gaps) {
            return gaps == 1 ? "1 gap ahead" : gaps + " gaps ahead";
        }
    },
    SPANISH {
        @Override
        String priority(Priority priority) {
            return switch (priority) {
                case LOW -> "baja";
                case MEDIUM -> "media";
                case HIGH -> "alta";
                case CRITICAL -> "crítica";
            };
        }

        @Override
        String uncovered(String priorities, String site, String when, int more) {
            String others = more == 0 ? "" : more == 1 ? ", 1 hueco más" : ", " + more + " huecos más";
            return "Nadie se entera enseguida de " + priorities + " en " + site + " " + when + others;
        }

        @Override
        String until(String time) {
            return "hasta " + time;
        }

        @Override
        String inDays(long days) {
            return "en " + days + " días";
        }

        @Override
        String ahead(int gaps) {
            return gaps == 1 ? "1 hueco por venir" : gaps + " huecos por venir";
        }
    };

    abstract String priority(Priority priority);

    /**
     * That nobody is called at once.
     *
     * @param when a time, {@link #until} one, or {@link #inDays}
     * @param more how many gaps there are besides
     */
    abstract String uncovered(String priorities, String site, String when, int more);

    abstract String until(String time);

    abstract String inDays(long days);

    /** The least that is said of them. */
    abstract String ahead(int gaps);
}
