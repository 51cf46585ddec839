#include "app/gui/views/plan_view.h"

#include "app/gui/document/document.h"
#include "tests/app/gui/support/fake_engine.h"

#include <gtest/gtest.h>

using namespace pw;

TEST(PlanView, ATappedBoreIsDrawnAsSoonAsItsSizeIsKnown) {
    gui::Document document;
    jobfile::Tree job = pw::testing::eightPinJob();
    job.erase("plate.bore");
    job.set("plate.bore_thread", "M24");
    document.startNew(job);
    gui::PlanView plan(document);
    EXPECT_EQ(plan.shape().bore, 0);

    auto report = std::make_shared<engine::Report>();
    auto region = std::make_shared<shape::Region>();
    region->rim = shape::circleLoop({0, 0}, 90);
    region->holes.push_back({shape::circleLoop({0, 0}, 10.5), shape::Part::Bore, 0});
    report->region = region;
    plan.setReport(report); // the job has not changed since
    EXPECT_DOUBLE_EQ(plan.shape().bore, 21);
}
