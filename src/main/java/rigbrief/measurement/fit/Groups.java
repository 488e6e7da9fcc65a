package rigbrief.measurement.fit;

import java.util.Arrays;

/** Where each parameter stands: among the shared ones, or within its group. */
final class Groups {
    private final int[] groupOf;
    private final int[] place;
    private final int[] shared;
    private final int[][] members;

    private Groups(int[] groupOf) {
        this.groupOf = groupOf;
        this.place = new int[groupOf.length];
        int groups = Arrays.stream(groupOf).max().orElse(Equations.SHARED) + 1;
        int[] sizes = new int[groups];
        int common = 0;
        for (int j = 0; j < groupOf.length; j++) {
            place[j] = groupOf[j] == Equations.SHARED ? common++ : sizes[groupOf[j]]++;
        }
        this.shared = new int[common];
        this.members = new int[groups][];
        Arrays.setAll(members, group -> new int[sizes[group]]);
        for (int j = 0; j < groupOf.length; j++) {
            int[] home = groupOf[j] == Equations.SHARED ? shared : members[groupOf[j]];
            home[place[j]] = j;
        }
    }

    /** The groups of some equations; where nothing is shared, no groups at all. */
    static Groups of(Equations equations) {
        int[] groupOf = equations.groups();
        if (Arrays.stream(groupOf).noneMatch(group -> group == Equations.SHARED)) {
            Arrays.fill(groupOf, Equations.SHARED);
        }
        return new Groups(groupOf);
    }

    /** Number of parameters. */
    int parameters() {
        return groupOf.length;
    }

    /** Number of groups. */
    int count() {
        return members.length;
    }

    /** Group of a parameter, or {@link Equations#SHARED}. */
    int of(int parameter) {
        return groupOf[parameter];
    }

    /** Place of a parameter among the shared ones or those of its group. */
    int place(int parameter) {
        return place[parameter];
    }

    /** The shared parameters, in order of place. */
    int[] shared() {
        return shared;
    }

    /** The parameters of a group, in order of place. */
    int[] members(int group) {
        return members[group];
    }
}
