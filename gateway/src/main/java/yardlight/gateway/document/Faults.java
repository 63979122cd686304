package yardlight.gateway.document;

import java.util.ArrayList;
import java.util.List;
import yardlight.escalation.sentence.Sentence;
import yardlight.gateway.problem.Fault;
import yardlight.gateway.problem.Problem;

/** Collects what is wrong while a document is read. */
public final class Faults {

    /** More than these help nobody; a body full of rubbish must not make an answer many times its size. */
    private static final int MOST = 200;

    private final List<Fault> found = new ArrayList<>();

    public void add(String pointer, String detail) {
        add(pointer, Sentence.plain(detail));
    }

    public void add(String pointer, Sentence rule) {
        if (found.size() < MOST) {
            found.add(Fault.at(pointer, rule));
        }
    }

    public void addAll(List<Fault> faults) {
        faults.forEach(fault -> add(fault.place(), fault.rule()));
    }

    /** Whether something is wrong already at this place or around it, so that more about it would only confuse. */
    public boolean within(String pointer) {
        return found.stream().anyMatch(fault -> (pointer + "/").startsWith(fault.place() + "/"));
    }

    public int count() {
        return found.size();
    }

    public List<Fault> list() {
        return List.copyOf(found);
    }

    /** @throws Problem 422 when anything was found */
    public void orNothing() {
        if (!found.isEmpty()) {
            throw Problem.invalid(found);
        }
    }
}
