package yardlight.gateway.answer;

import java.util.Collection;
import java.util.List;

final class SpanishSentences implements Sentences {

    @Override
    public String stranger() {
        return "Este número no se conoce aquí; no se hizo nada.";
    }

    @Override
    public String notUnderstood() {
        return "No se entendió, no se hizo nada. Envíe OK y el número del texto, como OK 47, o AYUDA.";
    }

    @Override
    public String notProven() {
        return "No se hizo nada. Responda al mismo mensaje, o envíe OK y el número que trae, como OK 47.";
    }

    @Override
    public String help() {
        return "OK 47: usted se encarga de 47. TODO: de todo. ESPERA 47 2H: aplazar 2 horas."
                + " ESTADO: qué pasa. QUIEN: a quién se llama. CAMBIO VIE: cambiar turno.";
    }

    @Override
    public String nothingWaits() {
        return "Gracias. Nada espera respuesta; no hay que hacer nada.";
    }

    @Override
    public String noSuchNumber(Collection<Integer> codes) {
        return "Nada con el número " + Lists.plain(codes) + " espera respuesta.";
    }

    @Override
    public String severalWait(Collection<Integer> codes) {
        return "Varias cosas esperan: envíe OK y uno de " + Lists.plain(codes) + ", o TODO.";
    }

    @Override
    public String youHaveIt(String name, List<String> alarms) {
        return "Usted se encarga, " + name + ": " + Lists.plain(alarms) + ".";
    }

    @Override
    public String hasIt(String name, String since) {
        return name + " se encarga desde " + since + ".";
    }

    @Override
    public String forHowLong(int code) {
        return "¿Por cuánto tiempo? Envíelo con un tiempo, como ESPERA " + code + " 2H.";
    }

    @Override
    public String putAway(List<String> alarms, String until) {
        return "Aplazado hasta " + until + ": " + Lists.plain(alarms) + ".";
    }

    @Override
    public String refused(String reason) {
        return "No se hizo nada: " + reason + ".";
    }

    @Override
    public String status(List<String> waiting, List<String> taken) {
        if (waiting.isEmpty() && taken.isEmpty()) {
            return "Todo tranquilo: no hay alarmas.";
        }
        return waiting.size() + " esperan respuesta, " + taken.size() + " tienen quien se encargue: "
                + Lists.plain(Lists.both(waiting, taken)) + ".";
    }

    @Override
    public String calledFirst(List<String> names) {
        return names.isEmpty()
                ? "Ahora no se llamaría primero a nadie."
                : "Primero se llama ahora a: " + Lists.plain(names) + ".";
    }

    @Override
    public String makeSureToShutIn(String site, int code) {
        return "Para pedir CERRAR " + site + " mande CERRAR " + code + " desde aquí en 5 min. Aún no se hizo nada.";
    }

    @Override
    public String shutInAsked(String site, boolean joined) {
        return (joined ? "Ya se había pedido cerrar " : "Se pide cerrar ") + site
                + ". Aún no está hecho: sabrá lo que diga el sitio.";
    }

    @Override
    public String wrongCode() {
        return "No se hizo nada: no es el código, o llegó tarde. Empiece de nuevo con CERRAR y el número del aviso.";
    }

    @Override
    public String works(Collection<String> lines) {
        return "Gracias. La prueba le llegó por la línea " + Lists.plain(lines) + ".";
    }

    @Override
    public String stopped(boolean others) {
        return "Aquí ya no llega nada. "
                + (others ? "Sus otras líneas se siguen usando." : "No se le llama por ninguna otra línea.")
                + " Para volver a recibir envíe ALTA.";
    }

    @Override
    public String started(int waiting) {
        return "Se le vuelve a llamar aquí."
                + (waiting == 0 ? "" : " Esperan respuesta: " + waiting + ". Envíe ESTADO.");
    }

    @Override
    public String notStopped() {
        return "Aquí se le llama. Para no recibir nada más envíe BAJA.";
    }
}
