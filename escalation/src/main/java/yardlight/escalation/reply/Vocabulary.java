package yardlight.escalation.reply;

import java.util.HashMap;
import java.util.Map;
import java.util.regex.Pattern;

/** The words that are known, without accents and in small letters, English and Spanish side by side. */
final class Vocabulary {

    private static final Map<String, Kind> KINDS = new HashMap<>();

    static {
        // I have it; also without a number.
        all(
                Kind.OK,
                "ok okay okey oky oki okk okok okie k kk ack acknowledge acknowledged acked roger copy copied vale listo"
                        + " enterado enterada recibido recibida entendido entendida confirmado confirmo confirmed copiado copiada acknowledging");
        // Slips of the thumb and words that mean it only beside a number.
        all(
                Kind.WITH_NUMBER,
                "oj pk ook okya okat okei oka okau oks okj acknowlege aknowledged got take taking mine yes yep yeah yup"
                        + " si claro bale orale enterdo resivido mio agarro encargo thumb omw voy sale tengo");
        all(Kind.ALL, "all everything todo todos todas");
        all(Kind.HOLD, "hold shelve snooze espera esperar pausa pausar aplaza aplazar");
        all(Kind.BEFORE_NUMBER, "num number numero code codigo alarm alarma el la al del the on");
        all(Kind.HASH, "#");
        all(Kind.BEFORE_ALL, "to a of de");
        all(Kind.AND, "and y e & + also tambien");
    }

    static {
        // On my way: may stand beside an answer that names nothing.
        all(
                Kind.GOING,
                "i'm im i am my estoy levante levanto house way going headed there out now ya salgo en camino para alla ahi will check be in"
                        + " minutes away ahorita enseguida driving leaving up awake reviso lo sir boss jefe it get rolling that");
        all(
                Kind.STARTS_TALK,
                "i've ive we're we let gonna its it's goin coming walking grabbing getting heading checking looking pulling putting turning"
                        + " starting working wading grab me nomas llego llegando saliendo");
        // May stand beside a number and changes nothing.
        all(
                Kind.FILLER,
                "thanks thank thx ty you gracias please por favor hi hello hey hola sure bueno buenas buenos dias noches good"
                        + " morning night evening sorry was asleep hear at put period punto perdon disculpa estaba dormido dormida too them guys have"
                        + " this one me dale great yo both pon pls porfa team folks ill i'll y'all one gonna go then so just ready ey oye pues avisar over");
        // With one of these nothing in the same breath is sure.
        all(
                Kind.DOUBT,
                "not no dont don't cant can't cannot wont won't never nope nah isnt isn't aint ain't neither nunca tampoco"
                        + " nadie nobody sin ni if should could would maybe unless until when what why pass manana tomorrow wrong instead wait later ask call tell"
                        + " need needs someone somebody cuando porque quizas talvez puede alguien llama equivocado except but pero menos"
                        + " excepto without unable anymore or o which cual nvm nevermind * $ / - : off thru through hasta who quien did does"
                        + " do done about sobre how only can still think guess probably thumbdown");
    }

    /** Said anywhere, also in a sentence of their own, these take the answer back. */
    static final Pattern TAKE_BACK =
            Pattern.compile("\\b(?:nvm|nevermind|never mind|not? ok|wait|cant|can't|cannot|unable|wrong|oops"
                    + "|ignore that|i meant|scratch that|not (me|my|mine)|no puedo|olvidalo|equivocado|mejor no|quise decir|cancel that"
                    + "|take it back|disregard|thumbdown|thought|instead)\\b");

    private Vocabulary() {}

    /** A word that could be two things is the first of them. */
    private static void all(Kind kind, String words) {
        for (String word : words.split(" ")) {
            KINDS.putIfAbsent(word, kind);
        }
    }

    /** What a word is; {@link Kind#OTHER} for one that nobody knows. */
    static Kind kind(String word) {
        return KINDS.getOrDefault(word, Kind.OTHER);
    }
}
