package yardlight.gateway.answer;

import java.util.List;

final class SpanishSwaps implements SwapSentences {

    @Override
    public String whichDay() {
        return "¿Qué día? Envíe CAMBIO y el día, como CAMBIO VIE, CAMBIO VIE NOCHE o CAMBIO 27 NOV.";
    }

    @Override
    public String asked(List<String> names, String span, String until, int code) {
        return "Se pregunta por el turno " + span + ". NO " + code
                + " lo retira. Es suyo hasta que alguien diga sí. Hasta " + until + " pueden: " + Lists.plain(names)
                + ".";
    }

    @Override
    public String askedAlready(List<String> names, int code) {
        return "Ya se preguntó por ese turno, NO " + code + " lo retira. Se preguntó a: " + Lists.plain(names) + ".";
    }

    @Override
    public String took(String from, String span) {
        return "Gracias. Usted toma el turno de " + from + " " + span + ". Ya quedó en el rol y se le avisa.";
    }

    @Override
    public String declined(String from, boolean others) {
        return "Anotado: usted no lo toma. "
                + (others ? "También se preguntó a otros." : "No queda nadie más; se le avisa a " + from + ".");
    }

    @Override
    public String takenBack(String span) {
        return "Retirado: ya no se pregunta a nadie, y usted tiene el turno " + span + ".";
    }

    @Override
    public String withNumber(int code) {
        return "¿Se refiere al turno que se le pidió tomar? Entonces envíe SI " + code + ", o NO " + code + ".";
    }
}
