package rigbrief.batch;

import java.util.ArrayList;
import java.util.List;

/**
 * The share of one machine in a batch that several machines answer.
 *
 * @param number which share, from 1
 * @param of number of shares, at least 1
 */
public record Shard(int number, int of) {
    /** The whole batch. */
    public static final Shard WHOLE = new Shard(1, 1);

    public Shard {
        if (of < 1 || number < 1 || number > of) {
            throw new IllegalArgumentException(
                    "found share %d of %d, expected 1 to the number of shares"
                            .formatted(number, of));
        }
    }

    /** Every so-many-th item, so that like briefs that stand side by side are dealt out. */
    public <T> List<T> of(List<T> all) {
        List<T> mine = new ArrayList<>();
        for (int i = number - 1; i < all.size(); i += of) {
            mine.add(all.get(i));
        }
        return mine;
    }
}
