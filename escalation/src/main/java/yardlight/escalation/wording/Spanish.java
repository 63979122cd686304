package yardlight.escalation.wording;

import java.time.DayOfWeek;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import yardlight.escalation.shutin.Asker;
import yardlight.escalation.shutin.RequestState;

final class Spanish implements Phrases {

    private static final List<String> DAYS = List.of("lun", "mar", "mié", "jue", "vie", "sáb", "dom");

    @Override
    public String condition(String condition) {
        return SpanishConditions.NAMES.getOrDefault(condition, condition.toUpperCase(Locale.ROOT));
    }

    @Override
    public String box() {
        return "CAJA";
    }

    @Override
    public String limit(String number) {
        return "límite " + number;
    }

    @Override
    public String target(String number) {
        return "objetivo " + number;
    }

    @Override
    public String was(String condition) {
        return "antes " + condition;
    }

    @Override
    public String returned(String time) {
        return time.isEmpty() ? "normal" : "normal desde " + time;
    }

    @Override
    public String wantsReset() {
        return "falta restablecer";
    }

    @Override
    public String stillFills(String feed) {
        return feed + " sigue con energía, los tanques se llenan";
    }

    @Override
    public String toOverflow(String length) {
        return "Rebosa en unos " + length;
    }

    @Override
    public String atWorst(String length) {
        return length + " en el peor caso";
    }

    @Override
    public String atWorst() {
        return "en el peor caso";
    }

    @Override
    public Optional<String> meaning(String condition) {
        return Optional.ofNullable(SpanishConditions.MEANINGS.get(condition));
    }

    @Override
    public String stands(Circumstance.Stands stands) {
        return switch (stands) {
            case WITHOUT_POWER -> "Está parada: no tiene energía";
            case AT_A_LEVEL -> "Está parada con el nivel alto: disparada, apagada o sin energía";
            case DRY -> "Está parada y el nivel no sube: casi no entra nada";
            case FOR_LONG -> "Lleva mucho parada: apagada, disparada o nada que bombear";
        };
    }

    @Override
    public String silentTogether(int sites, boolean link, String name, String time) {
        return togetherOn(sites, link, name) + " desde " + time;
    }

    @Override
    public String togetherOn(int sites, boolean link, String name) {
        String way = link ? "un enlace" : "una línea de energía";
        String named = (link ? "el enlace " : "la línea de energía ") + name;
        return sites + (sites == 1 ? " sitio en " : " sitios en ") + (name.isEmpty() ? way : named);
    }

    @Override
    public String times(int count) {
        return count + " veces";
    }

    @Override
    public String reply(int code) {
        return "Responda OK " + code;
    }

    @Override
    public String replyAll() {
        return "Responda ALL";
    }

    @Override
    public String or() {
        return "o";
    }

    @Override
    public String alarmsHere(int alarms) {
        return alarms + " alarmas, la peor";
    }

    @Override
    public String alarmsAt(int alarms, int sites) {
        return alarms + " alarmas en " + sites + " sitios";
    }

    @Override
    public String then() {
        return "luego";
    }

    @Override
    public String day(DayOfWeek day) {
        return DAYS.get(day.getValue() - 1);
    }

    @Override
    public String sitesReporting(int sites) {
        return switch (sites) {
            case 0 -> "Ningún sitio manda señal de vida";
            case 1 -> "El sitio reporta";
            default -> "Los " + sites + " sitios reportan";
        };
    }

    @Override
    public String sitesSilent(int silent, int sites) {
        return sites == 1 ? "El sitio está en silencio" : silent + " de " + sites + " sitios en silencio";
    }

    @Override
    public String inAlarm(int alarms) {
        return alarms + " en alarma";
    }

    @Override
    public String aside(int alarms) {
        return alarms == 1 ? "1 aplazada" : alarms + " aplazadas";
    }

    @Override
    public String unwatched(int sites) {
        return sites == 1 ? "1 sitio no manda señal de vida" : sites + " sitios no mandan señal de vida";
    }

    @Override
    public String late(String due) {
        return "tarde, era " + due;
    }

    @Override
    public String unproven() {
        return "Sin prueba en 30 días";
    }

    @Override
    public String lines() {
        return "líneas";
    }

    @Override
    public String way(Way way) {
        return "línea " + way.number() + (way.channel().isEmpty() ? "" : " (" + way.channel() + ")");
    }

    @Override
    public String proven(Way way, long days) {
        String when = days < 1 ? "hoy" : days == 1 ? "ayer" : "hace " + days + " días";
        return "L" + way(way).substring(1) + " probada " + when;
    }

    @Override
    public GapPhrases gaps() {
        return GapPhrases.SPANISH;
    }

    @Override
    public String test(Way way) {
        return "Prueba de Yardlight, no es alarma: esta es la " + way(way);
    }

    @Override
    public String backToNormal(int alarms, String time) {
        return (alarms == 1 ? "" : "todas ") + "normal desde " + time;
    }

    @Override
    public String lasted(String condition, String length) {
        return switch (condition) {
            case "power-off" -> "sin energía " + length;
            case "silent" -> "en silencio " + length;
            default -> "duró " + length;
        };
    }

    @Override
    public String noReply() {
        return "No hace falta responder.";
    }

    @Override
    public String hasIt(String name, String time) {
        return name + " se encarga desde " + time;
    }

    @Override
    public String has(String name) {
        return name + " se encarga de";
    }

    @Override
    public String normal(String time) {
        return "normal " + time;
    }

    @Override
    public String alarms(int alarms) {
        return alarms + " alarmas";
    }

    @Override
    public String news(int over, int taken) {
        String first = over + " otra vez normal";
        String second = taken + " en manos de otros";
        return taken == 0 ? first : over == 0 ? second : first + ", " + second;
    }

    @Override
    public String signedIn(boolean program) {
        return "entró con un " + (program ? "programa nuevo" : "navegador nuevo") + " desde";
    }

    @Override
    public String notKnown(boolean own) {
        return own ? "¿No fue usted? Cambie su contraseña." : "¿No lo conoce? Termine sus sesiones.";
    }

    @Override
    public String noAlarm() {
        return "no es alarma";
    }

    @Override
    public String more(int others) {
        return "Y " + others + " más.";
    }

    @Override
    public String asker(Asker.Kind asker) {
        return asker == Asker.Kind.LAST_CALL ? "el tiempo hasta el derrame" : "la escala";
    }

    @Override
    public String shutIn(RequestState state, String time, String by) {
        return switch (state) {
            case ASKED, TRYING, UNCERTAIN ->
                "SE PIDIÓ CERRAR " + time + (by.isEmpty() ? "" : ", " + by)
                        + ". Aún no está hecho: sabrá lo que diga el sitio.";
            case FETCHED -> "tiene el pedido de cerrar " + time + ". Aún no está hecho: debe confirmar.";
            case CONFIRMED -> "ESTÁ CERRADO, dice el sitio " + time + ". Solo se arranca en el sitio.";
            case REFUSED -> "NO SE CIERRA, dice el sitio " + time + ". Alguien debe ir.";
            case EXPIRED -> "NO SE CERRÓ: el pedido venció " + time + " sin que el sitio lo tomara.";
            case UNCONFIRMED -> "CIERRE SIN CONFIRMAR " + time + ". Puede estar hecho o no: alguien debe ver.";
            case WITHDRAWN -> "pedido de cierre retirado " + time + ". Si el sitio lo tenía, aún puede hacerse.";
        };
    }

    @Override
    public String also() {
        return "Además";
    }
}
