package rigbrief.file.tree;

import java.util.List;
import java.util.Optional;
import rigbrief.diagnostic.Fault;
import rigbrief.diagnostic.Faults;
import rigbrief.file.cell.Expectation;
import rigbrief.part.Cells;

/** One item of a list, or one value, with its place and a way to complain about it. */
public final class Text {
    private final String file;
    private final String path;
    private final Node node;
    private final Faults faults;

    Text(String file, String path, Node node, Faults faults) {
        this.file = file;
        this.path = path;
        this.node = node;
        this.faults = faults;
    }

    /** The text; empty where the item is no single value. */
    public String text() {
        return node instanceof Node.Scalar scalar ? scalar.text() : "";
    }

    /** Reports what is wrong with it. */
    public void fault(String expected, String advice) {
        faults.add(
                new Fault(file, node.line(), node.column(), path, node.shown(), expected, advice));
    }

    /** Reports that it is none of a set of names, with the nearest of them. */
    public void unknown(String what, List<String> names) {
        Expectation expectation = Expectation.name(text(), what, names);
        fault(expectation.text(), expectation.advice());
    }

    /** What a form makes of it; empty, with a fault, when the form refuses it. */
    public <T> Optional<T> read(Cells.Form<T> form) {
        try {
            return Optional.of(form.read(text()));
        } catch (Cells.Malformed malformed) {
            fault(malformed.expected(), malformed.advice());
            return Optional.empty();
        }
    }
}
