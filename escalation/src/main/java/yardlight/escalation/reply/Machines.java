package yardlight.escalation.reply;

import java.util.regex.Pattern;

/** Tells what a machine wrote by its words. */
final class Machines {

    private static final Pattern WROTE = Pattern.compile(
            "mensaje automatico|voicemail from|mensaje de voz|\\breply all for|auto(matic|mated|matica)?[ -]?(reply|response|respuesta)"
                    + "|respuesta automatica|out of (the )?office|fuera de la oficina"
                    + "|\\b(i'm|i am|im) driving\\b.*\\b(notif|reply|respond|see|when|later)|estoy (conduciendo|manejando)"
                    + "|do not disturb|no molestar|\\b(not|no|could not|couldn't|cannot be) (be |se |fue |pudo )*(delivered|entreg|sent\\b)"
                    + "|undeliver|delivery (failed|failure|has failed|status)|mailer-daemon|unmonitored|not monitored"
                    + "|\\b(not|don't|no) (reply|answer|responda|conteste)\\b.{0,12} (to this|this|a este|este)|on vacation|de vacaciones"
                    + "|failed to send|invalid (number|destination)|mailbox (is )?full|(message|msg) (blocked|rejected|not sent)"
                    + "|subscriber absent|\\bdelivered to \\W?\\d|free ?msg|one-?time code|\\b(your|tu|su) (code|codigo|verification)\\b"
                    + "|(not|no lo) (share|compart)|\\b(reply|text|txt|send|responda|responde|envia|envie) (ok|yes|stop|alto|help|si)\\b (to|for|2|para|al)"
                    + "|\\b(txt|text|reply|responde) (stop|alto)\\b|\\bopened ticket|ticket \\d|(received|recibimos) (your|su) (message|mensaje|mail|correo)"
                    + "|unsubscribe (here|at|below)|% off|mitad de precio");

    /** A phone tells that somebody pressed a sign beside a text of ours, and quotes it. */
    private static final Pattern REACTED =
            Pattern.compile("(reacted|liked|loved|disliked|emphasized|questioned|laughed at"
                    + "|reacciono|le gusto|le encanto|a .{1,30} le (gusto|encanto))\\b.{0,40}[\"\u201c\u00ab'].*");

    private Machines() {}

    static boolean wrote(String plain) {
        return WROTE.matcher(plain).find();
    }

    static boolean reacted(String plain) {
        return REACTED.matcher(plain).matches();
    }
}
