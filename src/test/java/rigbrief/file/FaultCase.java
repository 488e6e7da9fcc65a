package rigbrief.file;

/**
 * One text in a file replaced by another, and the one fault that this makes.
 *
 * @param file the file's name
 * @param from what stands there once
 * @param to what is put in its place; {@code »} in it marks where the fault points, if not at its
 *     beginning
 * @param at a text that stands in the changed file once and where the fault points instead; empty
 *     for none
 * @param fault the rest of the line behind the position
 */
record FaultCase(String file, String from, String to, String at, String fault) {
    private static final String MARK = "»";

    static FaultCase of(String file, String from, String to, String fault) {
        return new FaultCase(file, from, to, "", fault);
    }

    static FaultCase at(String file, String from, String to, String at, String fault) {
        return new FaultCase(file, from, to, at, fault);
    }

    /** What is put in. */
    String text() {
        return to.replace(MARK, "");
    }

    /** The whole line that is expected, for a file of that name and its text before the change. */
    String line(String name, String before) {
        String changed = FolderFixture.replaceOnce(before, from, text());
        int start = before.indexOf(from) + Math.max(0, to.indexOf(MARK));
        String place =
                at.isEmpty()
                        ? FolderFixture.place(changed, start)
                        : FolderFixture.place(changed, at);
        return name + ":" + place + ": " + fault;
    }

    @Override
    public String toString() {
        return file + ": " + to.replace("\n", "\\n");
    }
}
