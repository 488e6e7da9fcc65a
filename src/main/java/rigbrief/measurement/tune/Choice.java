package rigbrief.measurement.tune;

import java.util.List;
import rigbrief.assess.FrameModel.SceneTime;
import rigbrief.measurement.tune.Menu.Frame;

/**
 * Settings that were found, with what they do.
 *
 * @param frame preset, rays and upscaling
 * @param mix single settings
 * @param loss visible loss in thousandths
 * @param scenes frame times, scene by scene
 * @param heldFps sure rate in so much of the title as has to hold it, in hundredths of a frame/s
 */
record Choice(Frame frame, Mix mix, long loss, List<SceneTime> scenes, long heldFps) {
    Choice {
        scenes = List.copyOf(scenes);
    }

    /** Whether it is to be preferred: less lost, or as little lost and faster. */
    boolean prettierThan(Choice other) {
        return loss != other.loss ? loss < other.loss : heldFps > other.heldFps;
    }

    /** Whether it is to be preferred where no target can be held. */
    boolean fasterThan(Choice other) {
        return heldFps != other.heldFps ? heldFps > other.heldFps : loss < other.loss;
    }
}
