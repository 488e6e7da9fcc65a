package rigbrief.file.cell;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import rigbrief.part.BoxedCooler;
import rigbrief.part.Listing;
import rigbrief.part.Part;

/**
 * A part back as the cells of its row, so that a file can describe a part which no catalogue has.
 *
 * <p>A part's record names its components in the order in which its columns are read, one column
 * each; the columns come from its reader and the values from the record, so that a new kind needs
 * nothing here.
 */
public final class PartCells {
    private PartCells() {}

    /**
     * Text by column, in the order of the columns, without the id and without what says nothing.
     */
    public static Map<String, String> of(Part part) {
        Deque<Object> values = new ArrayDeque<>();
        spread(part, values);
        Map<String, String> cells = new LinkedHashMap<>();
        for (Column column : ColumnLister.of(part.kind())) {
            String text = EntryText.cell(values.removeFirst());
            if (!text.isEmpty() && !column.name().equals("id")) {
                cells.put(column.name(), text);
            }
        }
        return cells;
    }

    private static void spread(Object holder, Deque<Object> values) {
        for (RecordComponent component : holder.getClass().getRecordComponents()) {
            Object value = value(holder, component);
            if (value instanceof Listing) {
                spread(value, values);
            } else if (component.getName().equals("boxedCooler")) {
                boxedCooler((Optional<?>) value, values);
            } else {
                values.addLast(value);
            }
        }
    }

    /** The one component that two columns make. */
    private static void boxedCooler(Optional<?> value, Deque<Object> values) {
        Optional<BoxedCooler> boxed = value.map(BoxedCooler.class::cast);
        values.addLast(boxed.map(BoxedCooler::ratedHeatW));
        values.addLast(boxed.map(BoxedCooler::maxDba));
    }

    private static Object value(Object holder, RecordComponent component) {
        try {
            return component.getAccessor().invoke(holder);
        } catch (IllegalAccessException | InvocationTargetException impossible) {
            // Parts are public records, whose accessors are public and only return.
            throw new IllegalStateException(impossible);
        }
    }
}
