package yardlight.escalation.reply;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What is asked for in a message that says nothing else. */
final class Requests {

    private static final Pattern STATUS = Pattern.compile(
            "(what'?s |what is |cual es |(give|send) me |dame )?(the |el |current )?(status|estado|estatus)( please|"
                    + " por favor| report| now| ahora| actual| pls)?");
    private static final Pattern WHO = Pattern.compile("(a )?(who|quien|quienes)('?s| is| esta| anda| le toca)?"
            + "( (on|de guardia|de turno|on call|on duty|toca|working|guardia|turno))?"
            + "( (tonight|now|today|call|hoy|ahora|esta noche|hoy en la noche|right now|this week|esta semana))?");
    private static final Pattern HELP = Pattern.compile("(help|ayuda|info)( please| por favor| pls| porfa)?");
    private static final Pattern STOP = Pattern.compile(
            "(please |por favor )?(stop|stopall|unsubscribe|opt ?out|revoke|end|quit|cancel|alto|baja|parar|cancelar)("
                    + " all)?|(please )?stop (texting|sending|calling|messaging)( me| us| this number| please| now)*("
                    + " (these )?(texts|messages).*)?|(darme|denme|dame) de baja|dejen de (mandar|enviar)me .*|ya no me"
                    + " (manden|envien|mande|envie) .*|(please )?(take|remove) me off.*");
    private static final Pattern START = Pattern.compile("(please |por favor )?(start|unstop|resubscribe|subscribe|opt"
            + " ?in|alta|inicio|iniciar|empezar|comenzar|reanudar)( all)?|(please )?(start|resume)"
            + " (texting|sending|calling|messaging)( me| us| this number| please| now| again)*( (these"
            + " )?(texts|messages).*)?|(darme|denme|dame) de alta( otra vez| de nuevo)?|vuelvan a"
            + " (mandar|enviar)me .*|(please )?(put|add) me back( on)?.*");
    /** Nothing else is taken for it: who shuts in says exactly that. */
    private static final Pattern SHUT_IN = Pattern.compile("(?:shut(?: ?in)?|cerrar|cierre|cierra) (\\d{1,6})");

    /** With a number it answers a question that we asked; without one it is talk. */
    private static final Pattern NO =
            Pattern.compile("no (?:thanks |thank you |gracias |sorry |lo siento |perdon )?(\\d{2,6})"
                    + "(?: thanks| thank you| gracias| sorry| lo siento| perdon)?");

    private static final Pattern NAME = Pattern.compile("\\p{L}{0,20}( \\p{L}{1,20})?");
    private static final Pattern MARKS = Pattern.compile("[^\\p{L}\\p{N}' ]+");

    private Requests() {}

    /** @param own line by line; a name may stand below what is asked */
    static Optional<Said> meaning(List<String> own) {
        String below = String.join(" ", own.subList(Math.min(1, own.size()), own.size()));
        boolean name = NAME.matcher(below).matches();
        return own.isEmpty() ? Optional.empty() : meaning(name ? own.get(0) : own.get(0) + " " + below);
    }

    private static Optional<Said> meaning(String own) {
        String words = MARKS.matcher(own).replaceAll(" ").strip().replaceAll(" +", " ");
        Matcher shut = SHUT_IN.matcher(words);
        if (shut.matches()) {
            return Optional.of(new Said.ShutIn(Integer.parseInt(shut.group(1))));
        }
        Matcher no = NO.matcher(words);
        if (no.matches()) {
            return Optional.of(new Said.No(Integer.parseInt(no.group(1))));
        }
        Optional<Said> swap = Days.swap(words);
        if (swap.isPresent()) {
            return swap;
        }
        if (STATUS.matcher(words).matches()) {
            return Optional.of(new Said.Status());
        }
        if (WHO.matcher(words).matches() && !words.endsWith(" is")) {
            return Optional.of(new Said.Who());
        }
        if (HELP.matcher(words).matches()) {
            return Optional.of(new Said.Help());
        }
        if (START.matcher(words).matches()) {
            return Optional.of(new Said.Start());
        }
        return STOP.matcher(words).matches() ? Optional.of(new Said.Stop()) : Optional.empty();
    }
}
