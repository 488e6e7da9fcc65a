package rigbrief.file.cell;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import rigbrief.part.Bus16;
import rigbrief.part.ExpansionSlot;
import rigbrief.part.Fact;
import rigbrief.part.FamilySupport;
import rigbrief.part.FanGroup;
import rigbrief.part.FanPosition;
import rigbrief.part.IncludedFans;
import rigbrief.part.M2Slot;
import rigbrief.part.MemoryRate;
import rigbrief.part.Port;
import rigbrief.part.RadiatorPosition;
import rigbrief.part.RateByModules;
import rigbrief.part.Share;
import rigbrief.part.Tally;
import rigbrief.part.Word;
import rigbrief.quantity.Quantity;

/** Writes the values of a part the way their cells spell them. */
final class EntryText {
    private EntryText() {}

    /** A whole cell; empty where the value says nothing. */
    static String cell(Object value) {
        if (value instanceof Fact.NotStated) {
            return "";
        }
        if (value instanceof Fact.Stated<?> fact) {
            String text = cell(fact.value());
            return text.isEmpty() ? "none" : text;
        }
        if (value instanceof Optional<?> optional) {
            return optional.map(EntryText::cell).orElse("");
        }
        if (value instanceof OptionalInt optional) {
            return optional.isPresent() ? Integer.toString(optional.getAsInt()) : "";
        }
        if (value instanceof List<?> list) {
            return joined(list, ";");
        }
        if (value instanceof Tally<?> tally) {
            return joined(tally.counts().entrySet(), ";");
        }
        return single(value);
    }

    private static String joined(Collection<?> entries, String separator) {
        return entries.stream().map(EntryText::single).collect(Collectors.joining(separator));
    }

    private static String single(Object value) {
        if (value instanceof Word word) {
            return word.word();
        }
        if (value instanceof Double number) {
            return Figures.plain(number);
        }
        if (value instanceof Boolean yes) {
            return yes ? "yes" : "no";
        }
        if (value instanceof Quantity quantity) {
            return Long.toString(quantity.amount());
        }
        if (value instanceof Map.Entry<?, ?> count) {
            return single(count.getKey()) + ":" + count.getValue();
        }
        return value instanceof Record record ? record(record) : value.toString();
    }

    private static String record(Record value) {
        return value instanceof Share share ? share(share) : boardOrCase(value);
    }

    private static String boardOrCase(Record value) {
        if (value instanceof FamilySupport family) {
            return family.family() + "@" + family.firmware();
        }
        if (value instanceof MemoryRate rate) {
            return rate.type().word() + "@" + rate.mts();
        }
        if (value instanceof RateByModules rate) {
            return rate.modules() + ":" + rate.mts();
        }
        if (value instanceof ExpansionSlot slot) {
            return "x%d:gen%d:%d".formatted(slot.lanes(), slot.generation(), slot.position());
        }
        if (value instanceof M2Slot slot) {
            return "22" + slot.longestMm() + ":" + joined(slot.buses(), "|");
        }
        return portOrPlace(value);
    }

    private static String portOrPlace(Record value) {
        if (value instanceof Port port) {
            return port.standard() + ":" + port.count();
        }
        if (value instanceof Bus16 bus) {
            return "gen" + bus.generation() + "x" + bus.lanes();
        }
        if (value instanceof FanGroup fans) {
            return fans.count() + "x" + fans.sizeMm();
        }
        if (value instanceof FanPosition position) {
            return position.place().word() + ":" + joined(position.choices(), "|");
        }
        if (value instanceof IncludedFans included) {
            return included.place().word() + ":" + single(included.fans());
        }
        if (value instanceof RadiatorPosition radiator) {
            String sizes = joined(radiator.sizesMm(), "|");
            return radiator.place().word() + ":" + sizes + "@" + radiator.thicknessMm();
        }
        return value.toString(); // a resolution spells itself
    }

    private static String share(Share share) {
        String sata =
                share.sataPorts().stream()
                        .map(port -> "sata-" + port)
                        .collect(Collectors.joining(","));
        String slots =
                share.slotPositions().stream()
                        .map(position -> "slot-" + position)
                        .collect(Collectors.joining(","));
        String comma = sata.isEmpty() || slots.isEmpty() ? "" : ",";
        return "m2-" + share.m2() + " takes " + sata + comma + slots;
    }
}
