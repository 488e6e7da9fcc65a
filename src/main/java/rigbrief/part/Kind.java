package rigbrief.part;

import java.util.function.BiFunction;

/** The kinds of parts; one line each, with how a row of its file becomes a part. */
public enum Kind implements Word {
    PROCESSOR("processor", Processor::from),
    BOARD("board", Board::from),
    MEMORY("memory", Memory::from),
    GRAPHICS("graphics", Graphics::from),
    DRIVE("drive", Drive::from),
    SUPPLY("supply", Supply::from),
    COOLER("cooler", Cooler::from),
    CASE("case", PcCase::from),
    FAN("fan", Fan::from),
    WIRELESS("wireless", Wireless::from),
    BRACE("brace", Brace::from),
    CABLES("cables", Cables::from),
    SYSTEM("system", OperatingSystem::from),
    DISPLAY("display", Display::from);

    private final String word;
    private final BiFunction<Listing, Cells, Part> reader;

    Kind(String word, BiFunction<Listing, Cells, Part> reader) {
        this.word = word;
        this.reader = reader;
    }

    @Override
    public String word() {
        return word;
    }

    /** The name of the kind's file in a catalogue folder. */
    public String fileName() {
        return word + ".csv";
    }

    /** The part that a row states. */
    public Part read(Cells cells) {
        return reader.apply(Listing.from(cells), cells);
    }
}
