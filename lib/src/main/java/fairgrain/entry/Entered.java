package fairgrain.entry;

import fairgrain.design.Box;
import fairgrain.design.Part;
import fairgrain.part.Setting;
import java.util.Optional;

/** A part as it was entered, before the place and the case it belongs to are known. */
@FunctionalInterface
interface Entered {
    Part in(Setting setting, Optional<Box> box);
}
