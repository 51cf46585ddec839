#include "app/gui/document/document.h"

#include "core/jobfile/read.h"
#include "tests/app/gui/support/fake_engine.h"

#include <gtest/gtest.h>
#include <QSignalSpy>
#include <QTemporaryDir>

namespace pw::gui {
namespace {

using jobfile::Tree;
using testing::eightPinJob;

class DocumentTest : public ::testing::Test {
protected:
    DocumentTest() { document.startNew(eightPinJob()); }
    std::string at(const char* path) const {
        const Tree* value = document.tree().at(path);
        return value && value->text() ? *value->text() : std::string();
    }
    Document document;
};

TEST_F(DocumentTest, edits_undoes_and_does_again) {
    document.edit("plate.bore", "28 mm", "Bore");
    EXPECT_DOUBLE_EQ(document.job().plate.bore->mm(), 28);
    document.undoStack().undo();
    EXPECT_EQ(at("plate.bore"), "26 mm");
    EXPECT_DOUBLE_EQ(document.job().plate.bore->mm(), 26);
    document.undoStack().redo();
    EXPECT_EQ(at("plate.bore"), "28 mm");
}

TEST_F(DocumentTest, keeps_keys_it_does_not_know_at_every_depth_through_edits_and_saving) {
    QTemporaryDir folder;
    const std::filesystem::path file = (folder.path() + QStringLiteral("/job.plate.json")).toStdString();
    Tree tree = eightPinJob();
    const std::pair<const char*, Tree> foreign[] = {
        {"shop_order", Tree(Tree::List{"A 7", 12, Tree()})},
        {"stations.paint", "red"},
        {"plate.holes[0].at", Tree(Tree::List{"60 mm", "0 mm"})},
        {"plate.holes[0].diameter", "8 mm"},
        {"plate.holes[0].burr", true},
        {"plate.holes[1].at", Tree(Tree::List{"-60 mm", "0 mm"})},
        {"plate.holes[1].diameter", "8 mm"},
        {"plate.holes[1].burr.height", "0.2 mm"},
        {"plate.outline.drawn.by", "hand"},
        {"screw.history", Tree(Tree::List{Tree::object(), "stretched once"})},
        {"group.of", Tree::object()},
    };
    for (const auto& [path, value] : foreign)
        tree.set(path, value);
    document.startNew(tree);
    document.edit("plate.thickness", "13 mm", "Thickness");
    document.edit("plate.holes[0].diameter", "9 mm", "Hole");
    document.edit("stations.circle", "101 mm", "Circle");
    document.edit("screw.grade", "10.9", "Grade");
    document.undoStack().undo();
    ASSERT_TRUE(document.saveAs(file));
    Document again;
    ASSERT_TRUE(again.open(file));
    for (const auto& [path, value] : foreign)
        if (std::string_view(path) != "plate.holes[0].diameter") {
            ASSERT_TRUE(again.tree().at(path)) << path;
            EXPECT_EQ(*again.tree().at(path), value) << path;
        }
    EXPECT_EQ(*again.tree().at("plate.thickness")->text(), "13 mm");
}

TEST_F(DocumentTest, makes_one_step_of_a_drag_and_two_of_two_drags) {
    const int first = document.newGesture();
    for (const char* size : {"27 mm", "28 mm", "29 mm"})
        document.edit("plate.bore", size, "Bore", first);
    EXPECT_EQ(document.undoStack().count(), 1);
    const int second = document.newGesture();
    document.edit("plate.bore", "30 mm", "Bore", second);
    EXPECT_EQ(document.undoStack().count(), 2);
    document.undoStack().undo();
    EXPECT_EQ(at("plate.bore"), "29 mm");
    document.undoStack().undo();
    EXPECT_EQ(at("plate.bore"), "26 mm");
}

TEST_F(DocumentTest, does_not_merge_two_figures_of_one_gesture) {
    const int gesture = document.newGesture();
    document.edit("plate.bore", "27 mm", "Bore", gesture);
    document.edit("plate.thickness", "12 mm", "Thickness", gesture);
    EXPECT_EQ(document.undoStack().count(), 2);
}

TEST_F(DocumentTest, forgets_a_drag_that_ends_where_it_began) {
    const int gesture = document.newGesture();
    document.edit("plate.bore", "27 mm", "Bore", gesture);
    document.edit("plate.bore", "26 mm", "Bore", gesture);
    EXPECT_EQ(document.undoStack().count(), 0);
    EXPECT_FALSE(document.isChanged());
}

TEST_F(DocumentTest, says_nothing_when_nothing_changes) {
    QSignalSpy changed(&document, &Document::changed);
    const auto revision = document.revision();
    document.edit("plate.bore", "26 mm", "Bore");
    EXPECT_EQ(changed.count(), 0);
    EXPECT_EQ(document.revision(), revision);
}

TEST_F(DocumentTest, takes_a_figure_out_when_it_is_emptied) {
    document.edit("stations.keeper", Tree(), "Keeper");
    EXPECT_EQ(document.tree().at("stations.keeper"), nullptr);
    EXPECT_FALSE(document.job().stations.keeper);
}

TEST_F(DocumentTest, tells_what_the_reader_would_object_to_and_changes_nothing) {
    const auto before = document.revision();
    EXPECT_TRUE(document.objection("stations.access_hole", "20 mmm"));
    EXPECT_TRUE(document.objection("stations.access_hole", "-3 mm"));
    EXPECT_FALSE(document.objection("stations.access_hole", "7/8 in"));
    EXPECT_EQ(document.revision(), before);
}

TEST_F(DocumentTest, saves_and_opens_what_was_typed_to_the_letter) {
    QTemporaryDir folder;
    const std::filesystem::path file = folder.filePath("job.plate.json").toStdString();
    document.edit("stations.access_hole", "2 11/32\"", "Access hole");
    EXPECT_TRUE(document.isChanged());
    ASSERT_TRUE(document.saveAs(file).ok());
    EXPECT_FALSE(document.isChanged());

    Document again;
    ASSERT_TRUE(again.open(file).ok());
    EXPECT_EQ(again.tree(), document.tree());
    EXPECT_FALSE(again.isChanged());
    EXPECT_EQ(again.path(), file);
}

TEST_F(DocumentTest, keeps_the_job_when_a_file_cannot_be_opened) {
    document.edit("plate.bore", "28 mm", "Bore");
    EXPECT_FALSE(document.open("no/such/file.plate.json").ok());
    EXPECT_EQ(at("plate.bore"), "28 mm");
    EXPECT_TRUE(document.undoStack().canUndo());
}

class DocumentFileTest : public DocumentTest {
protected:
    DocumentFileTest() { EXPECT_TRUE(document.saveAs(file).ok()); }
    void someoneElseWrites(const char* bore) {
        Tree theirs = eightPinJob();
        theirs.set("plate.bore", bore);
        ASSERT_TRUE(jobfile::saveTree(theirs, file).ok());
    }
    QTemporaryDir folder;
    std::filesystem::path file = folder.filePath("pack.plate.json").toStdString();
    std::filesystem::path copy = folder.filePath("pack.plate.json~").toStdString();
};

TEST_F(DocumentFileTest, keeps_what_the_file_held_beside_it_when_it_saves) {
    EXPECT_FALSE(std::filesystem::exists(copy));
    document.edit("plate.bore", "28 mm", "Bore");
    ASSERT_TRUE(document.save().ok());
    EXPECT_EQ(*jobfile::loadTree(copy), eightPinJob());
    ASSERT_TRUE(document.save().ok()); // nothing new: the copy stays the one before
    EXPECT_EQ(*jobfile::loadTree(copy), eightPinJob());
}

TEST_F(DocumentFileTest, does_not_put_a_broken_file_in_the_place_of_the_last_good_copy) {
    document.edit("plate.bore", "28 mm", "Bore");
    ASSERT_TRUE(document.save().ok());
    std::filesystem::resize_file(file, 30);
    ASSERT_TRUE(document.save().ok());
    EXPECT_EQ(*jobfile::loadTree(copy), eightPinJob());
    EXPECT_EQ(*jobfile::loadTree(file), document.tree());
}

TEST_F(DocumentFileTest, saves_all_the_same_when_no_copy_can_be_kept_and_says_so) {
    std::filesystem::create_directory(copy); // in its way
    document.edit("plate.bore", "28 mm", "Bore");
    ASSERT_TRUE(document.save().ok());
    EXPECT_TRUE(document.saveRemark().contains("pack.plate.json~"));
    EXPECT_EQ(*jobfile::loadTree(file), document.tree());
}

TEST_F(DocumentFileTest, undoes_past_a_save_and_knows_what_is_saved) {
    document.edit("plate.bore", "28 mm", "Bore");
    ASSERT_TRUE(document.save().ok());
    EXPECT_FALSE(document.isChanged());
    document.undoStack().undo();
    EXPECT_EQ(at("plate.bore"), "26 mm");
    EXPECT_TRUE(document.isChanged());
    document.undoStack().redo();
    EXPECT_FALSE(document.isChanged());
}

TEST_F(DocumentFileTest, goes_back_to_what_is_saved_as_a_step_that_can_be_undone) {
    document.edit("plate.bore", "28 mm", "Bore");
    document.edit("plate.thickness", "6 mm", "Thickness");
    ASSERT_TRUE(document.revert().ok());
    EXPECT_EQ(document.tree(), eightPinJob());
    EXPECT_FALSE(document.isChanged());
    document.undoStack().undo();
    EXPECT_EQ(at("plate.bore"), "28 mm");
    EXPECT_EQ(at("plate.thickness"), "6 mm");
    EXPECT_TRUE(document.isChanged());
}

TEST_F(DocumentFileTest, notices_what_someone_else_did_to_the_file_and_not_what_it_did_itself) {
    EXPECT_EQ(document.onDisk(), Document::OnDisk::Same);
    document.edit("plate.bore", "28 mm", "Bore");
    ASSERT_TRUE(document.save().ok());
    EXPECT_EQ(document.onDisk(), Document::OnDisk::Same);
    someoneElseWrites("30 mm");
    EXPECT_EQ(document.onDisk(), Document::OnDisk::Changed);
    ASSERT_TRUE(document.revert().ok());
    EXPECT_EQ(at("plate.bore"), "30 mm");
    EXPECT_EQ(document.onDisk(), Document::OnDisk::Same);
    std::filesystem::remove(file);
    EXPECT_EQ(document.onDisk(), Document::OnDisk::Gone);
    document.fileLost();
    EXPECT_TRUE(document.isChanged());
}

/// A network drive or a stick that is taken away between opening and saving.
TEST_F(DocumentFileTest, keeps_the_job_when_its_folder_vanishes_and_saves_it_when_the_folder_is_back) {
    const std::filesystem::path drive = folder.filePath("drive").toStdString(),
                                away = folder.filePath("away").toStdString(),
                                there = drive / "pack.plate.json";
    std::filesystem::create_directory(drive);
    ASSERT_TRUE(document.saveAs(there).ok());
    document.edit("plate.bore", "28 mm", "Bore");
    std::filesystem::rename(drive, away);
    EXPECT_EQ(document.onDisk(), Document::OnDisk::Gone);
    const auto saved = document.save();
    ASSERT_FALSE(saved.ok());
    EXPECT_EQ(saved.problem().field, there.string());
    EXPECT_NE(saved.problem().message.find("no such folder"), std::string::npos) << saved.problem().message;
    EXPECT_FALSE(std::filesystem::exists(drive)) << "a folder was made where a drive was";
    EXPECT_TRUE(document.isChanged());
    EXPECT_EQ(at("plate.bore"), "28 mm");
    EXPECT_EQ(*jobfile::loadTree(away / "pack.plate.json"), eightPinJob());
    std::filesystem::rename(away, drive);
    ASSERT_TRUE(document.save().ok());
    EXPECT_EQ(*jobfile::loadTree(there), document.tree());
    EXPECT_EQ(*jobfile::loadTree(drive / "pack.plate.json~"), eightPinJob());
}

TEST_F(DocumentFileTest, keeps_what_the_other_window_saved_when_two_have_one_file_open) {
    Document other;
    ASSERT_TRUE(other.open(file).ok());
    document.edit("plate.bore", "28 mm", "Bore");
    other.edit("plate.bore", "30 mm", "Bore");
    ASSERT_TRUE(document.save().ok());
    ASSERT_EQ(other.onDisk(), Document::OnDisk::Changed) << "nothing tells it to ask first";
    ASSERT_TRUE(other.save().ok()); // told to, all the same
    EXPECT_EQ(*jobfile::loadTree(file), other.tree());
    EXPECT_EQ(*jobfile::loadTree(copy), document.tree()) << "what the first saved is lost";
    EXPECT_EQ(document.onDisk(), Document::OnDisk::Changed);
}

TEST_F(DocumentFileTest, opens_a_file_and_knows_it_for_the_one_it_opened) {
    Document other;
    ASSERT_TRUE(other.open(file).ok());
    EXPECT_EQ(other.onDisk(), Document::OnDisk::Same);
    someoneElseWrites("30 mm");
    EXPECT_EQ(other.onDisk(), Document::OnDisk::Changed);
}

} // namespace
} // namespace pw::gui
