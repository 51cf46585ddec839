#include "app/gui/models/new_job.h"

namespace pw::gui {

using jobfile::Tree;

Tree newJob(NewJob kind, units::System system) {
    const bool inch = system == units::System::Inch;
    const bool strongback = kind == NewJob::PullStrongback, bar = kind == NewJob::CompressBar || strongback,
               pull = kind == NewJob::PullBolts || strongback;
    Tree job = Tree::object();
    job.set("platewright", 1);
    job.set("work", pull ? "pull" : "compress");
    job.set("stations.count", bar ? 2 : pull ? 3 : 6);
    if (!pull) {
        Tree spring = Tree::object();
        spring.set("name", "outer");
        spring.set("loads", Tree(Tree::List{Tree::object()}));
        job.set("springs", Tree(Tree::List{spring}));
    }
    job.set("plate.outline.shape", bar ? "bar" : "disc");
    job.set("plate.steel", "unknown scrap");
    job.set("screw.lubrication", "oiled");
    job.set("screw.turns", pull ? "screw" : "nut");
    if (pull)
        job.set("screw.into", "plate");
    if (kind == NewJob::PullBolts)
        job.set("hub.bolts.count", 3);
    if (strongback)
        job.set("legs.count", 2);
    job.set("cutting.process", inch ? "saw and drill" : "plasma table");
    return job;
}

} // namespace pw::gui
