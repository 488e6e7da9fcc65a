package rigbrief.measurement.tune;

import java.util.List;

/**
 * One step for each single setting of a title.
 *
 * @param graphics what the steps cost of the card's reference work, in millionths
 * @param processor what they cost of the processor's, in millionths
 * @param loss visible loss in thousandths
 * @param steps index of each setting's step, in the title's order
 */
record Mix(long graphics, long processor, long loss, List<Integer> steps) {
    Mix {
        steps = List.copyOf(steps);
    }
}
