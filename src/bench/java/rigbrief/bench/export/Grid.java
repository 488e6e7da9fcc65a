package rigbrief.bench.export;

import java.nio.IntBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToIntFunction;
import rigbrief.part.Slot;

/**
 * A function of a few slots, as a table over classes of candidates.
 *
 * <p>Every combination was asked; candidates of a slot share a class when no combination tells them
 * apart.
 *
 * @param name what is tabled
 * @param slots the slots, in slot order
 * @param classOf for each of them the class of every candidate, by its place in the domain
 * @param classes number of classes of each slot
 * @param rows every combination of classes with its value behind it
 */
public record Grid(
        String name, List<Slot> slots, List<int[]> classOf, int[] classes, List<int[]> rows) {

    /** Number of combinations of some sizes, at most {@code limit + 1}. */
    static long combinations(int[] sizes, long limit) {
        long product = 1;
        for (int size : sizes) {
            product = Math.min(limit + 1, product * size);
        }
        return product;
    }

    /**
     * Asks every combination and puts together what can't be told apart.
     *
     * @param sizes number of candidates of each slot
     * @param value the value of one combination, given the places in the slots' order
     */
    static Grid ask(String name, List<Slot> slots, int[] sizes, ToIntFunction<int[]> value) {
        int count = Math.toIntExact(combinations(sizes, Integer.MAX_VALUE - 1L));
        int[] values = new int[count];
        int[] at = new int[sizes.length];
        for (int i = 0; i < count; i++) {
            values[i] = value.applyAsInt(at);
            for (int d = sizes.length - 1; d >= 0 && ++at[d] == sizes[d]; d--) {
                at[d] = 0;
            }
        }
        List<int[]> classOf = new ArrayList<>();
        int[] left = sizes.clone();
        for (int d = 0; d < sizes.length; d++) {
            int[] classes = classes(values, left, d);
            classOf.add(classes);
            int many = Arrays.stream(classes).max().orElse(-1) + 1;
            values = merged(values, left, d, classes, many);
            left[d] = many;
        }
        return new Grid(name, slots, classOf, left, rows(values, left));
    }

    private static int[] classes(int[] values, int[] sizes, int dimension) {
        int inner = inner(sizes, dimension);
        Map<IntBuffer, Integer> known = new HashMap<>();
        int[] classes = new int[sizes[dimension]];
        int outer = values.length / inner / sizes[dimension];
        for (int c = 0; c < sizes[dimension]; c++) {
            int[] slice = new int[outer * inner];
            for (int o = 0; o < outer; o++) {
                for (int i = 0; i < inner; i++) {
                    slice[o * inner + i] = values[(o * sizes[dimension] + c) * inner + i];
                }
            }
            classes[c] = known.computeIfAbsent(IntBuffer.wrap(slice), any -> known.size());
        }
        return classes;
    }

    private static int[] merged(int[] values, int[] sizes, int dimension, int[] classes, int many) {
        int inner = inner(sizes, dimension);
        int outer = values.length / inner / sizes[dimension];
        int[] merged = new int[outer * many * inner];
        for (int o = 0; o < outer; o++) {
            for (int c = 0; c < sizes[dimension]; c++) {
                System.arraycopy(
                        values,
                        (o * sizes[dimension] + c) * inner,
                        merged,
                        (o * many + classes[c]) * inner,
                        inner);
            }
        }
        return merged;
    }

    private static int inner(int[] sizes, int dimension) {
        int inner = 1;
        for (int d = dimension + 1; d < sizes.length; d++) {
            inner *= sizes[d];
        }
        return inner;
    }

    private static List<int[]> rows(int[] values, int[] sizes) {
        List<int[]> rows = new ArrayList<>();
        int[] at = new int[sizes.length];
        for (int value : values) {
            int[] row = Arrays.copyOf(at, sizes.length + 1);
            row[sizes.length] = value;
            rows.add(row);
            for (int d = sizes.length - 1; d >= 0 && ++at[d] == sizes[d]; d--) {
                at[d] = 0;
            }
        }
        return rows;
    }
}
