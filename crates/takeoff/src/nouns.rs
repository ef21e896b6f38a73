//! What is counted and measured, as people call it: one of it, and several.

use crate::words::plural;
use chalkcourse_geometry::EdgeKind;
use chalkcourse_job::{ChimneyPart, CricketPart, Measure};

/// What one of a measure is called. A length is told by its runs.
pub(crate) fn noun(measure: &Measure) -> &str {
    match measure {
        Measure::Module => chalkcourse_words::common::MODULE.now(),
        Measure::Block => chalkcourse_words::common::BLOCK_2.now(),
        Measure::Row => chalkcourse_words::common::ROW.now(),
        Measure::Seam => chalkcourse_words::takeoff::SEAM.now(),
        Measure::BaseRail => chalkcourse_words::takeoff::RUN_OF_BASE_RAIL.now(),
        Measure::Side => chalkcourse_words::common::SIDE.now(),
        Measure::SideCourse => chalkcourse_words::takeoff::COURSE_UP_THE_SIDES_ONE.now(),
        Measure::Head => chalkcourse_words::takeoff::RUN_OF_HEAD_FLASHING.now(),
        Measure::HeadModule => chalkcourse_words::takeoff::MODULE_UNDER_THE_HEAD.now(),
        Measure::HeadSupport => chalkcourse_words::takeoff::HEAD_END_AND_SEAM.now(),
        Measure::HeadCornerLeft => chalkcourse_words::takeoff::LEFT_HEAD_CORNER.now(),
        Measure::HeadCornerRight => chalkcourse_words::takeoff::RIGHT_HEAD_CORNER.now(),
        Measure::InsideCorner => chalkcourse_words::common::INSIDE_CORNER.now(),
        Measure::BaseCornerLeft => chalkcourse_words::takeoff::LEFT_BASE_CORNER.now(),
        Measure::BaseCornerRight => chalkcourse_words::takeoff::RIGHT_BASE_CORNER.now(),
        Measure::Under => chalkcourse_words::takeoff::AREA_UNDER_THE_ARRAY.now(),
        Measure::Around => chalkcourse_words::takeoff::STRIP_AROUND_THE_ARRAY.now(),
        Measure::ArrayMembrane => chalkcourse_words::takeoff::ARRAY_WITH_THE_STRIP_AROUND.now(),
        Measure::BondingPath => chalkcourse_words::takeoff::BONDING_PATH.now(),
        Measure::WindFastener => chalkcourse_words::takeoff::EXTRA_FASTENER_FOR_WIND.now(),
        Measure::Part(number) => number,
        Measure::Sticks(_) => chalkcourse_words::takeoff::STICK_OF_THIS_LENGTH_IN.now(),
        Measure::Joints(_) => chalkcourse_words::takeoff::JOINT_BETWEEN_TWO_PIECES.now(),
        Measure::Job => chalkcourse_words::common::JOB.now(),
        Measure::Person => chalkcourse_words::takeoff::PERSON.now(),
        Measure::PersonOnRoof => chalkcourse_words::takeoff::PERSON_ON_THE_ROOF.now(),
        Measure::Deck => chalkcourse_words::takeoff::FACE_OF_DECK.now(),
        Measure::TearOff => chalkcourse_words::takeoff::FACE_OF_OLD_ROOFING_EACH.now(),
        Measure::Shingled => chalkcourse_words::takeoff::FACE_OF_DECK_LESS_THE.now(),
        Measure::SingleUnderlayment => chalkcourse_words::takeoff::FACE_WITH_ONE_LAYER_OF.now(),
        Measure::DoubleUnderlayment => chalkcourse_words::takeoff::FACE_WITH_TWO_LAYERS_OF.now(),
        Measure::LeakBarrier => chalkcourse_words::takeoff::STRIP_ALONG_THE_EAVES.now(),
        Measure::AroundThrough => chalkcourse_words::takeoff::STRIP_AROUND_WHAT_COMES_THROUGH.now(),
        Measure::Edge(kind) => kind.name(),
        Measure::SideWall => chalkcourse_words::takeoff::WALL_LINE_UP_THE_SLOPE.now(),
        Measure::SideWallCourse => chalkcourse_words::takeoff::COURSE_UP_THE_WALL_LINES.now(),
        Measure::HeadWall => chalkcourse_words::takeoff::WALL_LINE_ACROSS_THE_SLOPE.now(),
        Measure::KickOut => chalkcourse_words::takeoff::WALL_AT_THE_END_OF.now(),
        Measure::Chimney(part) => match part {
            ChimneyPart::Each => chalkcourse_words::common::CHIMNEY_2.now(),
            ChimneyPart::Apron => chalkcourse_words::takeoff::LOWER_SIDE_OF_A_CHIMNEY.now(),
            ChimneyPart::Course => chalkcourse_words::takeoff::COURSE_BESIDE_CHIMNEYS_ONE_MORE.now(),
            ChimneyPart::BackPan => chalkcourse_words::takeoff::UPPER_SIDE_OF_A_CHIMNEY.now(),
            ChimneyPart::Counter => chalkcourse_words::takeoff::STRETCH_AROUND_A_CHIMNEY.now(),
        },
        Measure::Cricket(part) => match part {
            CricketPart::Each => chalkcourse_words::takeoff::CRICKET.now(),
            CricketPart::Frame => chalkcourse_words::takeoff::PIECE_OF_A_CRICKETS_FRAME.now(),
            CricketPart::Area => chalkcourse_words::takeoff::CRICKET_BOTH_FACES.now(),
            CricketPart::Valley => chalkcourse_words::takeoff::VALLEY_OF_A_CRICKET.now(),
            CricketPart::Wall => chalkcourse_words::takeoff::LINE_OF_A_CRICKET_AT.now(),
        },
        Measure::Through(kind) => kind.name(),
        Measure::Pipe { .. } => chalkcourse_words::takeoff::PIPE_OF_THIS_SIZE.now(),
        Measure::CurbCourse => chalkcourse_words::takeoff::COURSE_BESIDE_CHIMNEYS_AND_SKYLIGHTS.now(),
        Measure::CurbWidth => chalkcourse_words::takeoff::LOWER_OR_UPPER_SIDE_OF.now(),
    }
}

pub(crate) fn nouns(measure: &Measure, count: f64) -> String {
    if (count - 1.0).abs() < 1e-9 {
        return noun(measure).to_owned();
    }
    match measure {
        Measure::BaseRail => chalkcourse_words::takeoff::RUNS_OF_BASE_RAIL.now().to_owned(),
        Measure::Head => chalkcourse_words::takeoff::RUNS_OF_HEAD_FLASHING.now().to_owned(),
        Measure::HeadModule => chalkcourse_words::takeoff::MODULES_UNDER_THE_HEAD.now().to_owned(),
        Measure::HeadSupport => chalkcourse_words::takeoff::HEAD_ENDS_AND_SEAMS.now().to_owned(),
        Measure::SideCourse => chalkcourse_words::takeoff::COURSES_UP_THE_SIDES_ONE.now().to_owned(),
        Measure::Under => chalkcourse_words::takeoff::AREAS_UNDER_THE_ARRAY.now().to_owned(),
        Measure::Around => chalkcourse_words::takeoff::STRIPS_AROUND_THE_ARRAY.now().to_owned(),
        Measure::Sticks(_) => chalkcourse_words::takeoff::STICKS_OF_THIS_LENGTH_IN.now().to_owned(),
        Measure::Joints(_) => chalkcourse_words::takeoff::JOINTS_BETWEEN_TWO_PIECES.now().to_owned(),
        Measure::Person => chalkcourse_words::takeoff::PEOPLE.now().to_owned(),
        Measure::PersonOnRoof => chalkcourse_words::takeoff::PEOPLE_ON_THE_ROOF.now().to_owned(),
        Measure::ArrayMembrane => chalkcourse_words::takeoff::ARRAYS_WITH_THE_STRIP_AROUND.now().to_owned(),
        Measure::Deck => chalkcourse_words::takeoff::FACES_OF_DECK.now().to_owned(),
        Measure::TearOff => chalkcourse_words::takeoff::FACES_OF_OLD_ROOFING_EACH.now().to_owned(),
        Measure::Shingled => chalkcourse_words::takeoff::FACES_OF_DECK_LESS_THE.now().to_owned(),
        Measure::SingleUnderlayment => chalkcourse_words::takeoff::FACES_WITH_ONE_LAYER_OF.now().to_owned(),
        Measure::DoubleUnderlayment => chalkcourse_words::takeoff::FACES_WITH_TWO_LAYERS_OF.now().to_owned(),
        Measure::LeakBarrier => chalkcourse_words::takeoff::STRIPS_ALONG_THE_EAVES.now().to_owned(),
        Measure::AroundThrough => {
            chalkcourse_words::takeoff::STRIPS_AROUND_WHAT_COMES_THROUGH.now().to_owned()
        }
        Measure::SideWall => chalkcourse_words::takeoff::WALL_LINES_UP_THE_SLOPE.now().to_owned(),
        Measure::SideWallCourse => chalkcourse_words::takeoff::COURSES_UP_THE_WALL_LINES.now().to_owned(),
        Measure::HeadWall => chalkcourse_words::takeoff::WALL_LINES_ACROSS_THE_SLOPE.now().to_owned(),
        Measure::KickOut => chalkcourse_words::takeoff::WALLS_AT_THE_END_OF.now().to_owned(),
        Measure::Chimney(part) => match part {
            ChimneyPart::Each => chalkcourse_words::takeoff::CHIMNEYS.now(),
            ChimneyPart::Apron => chalkcourse_words::takeoff::LOWER_SIDES_OF_CHIMNEYS_WITH.now(),
            ChimneyPart::Course => chalkcourse_words::takeoff::COURSES_BESIDE_CHIMNEYS_ONE_MORE.now(),
            ChimneyPart::BackPan => chalkcourse_words::takeoff::UPPER_SIDES_OF_CHIMNEYS_WITH.now(),
            ChimneyPart::Counter => chalkcourse_words::takeoff::STRETCHES_AROUND_CHIMNEYS.now(),
        }
        .to_owned(),
        Measure::Cricket(part) => match part {
            CricketPart::Each => chalkcourse_words::takeoff::CRICKETS.now(),
            CricketPart::Frame => chalkcourse_words::takeoff::PIECES_OF_CRICKETS_FRAMES.now(),
            CricketPart::Area => chalkcourse_words::takeoff::CRICKETS_BOTH_FACES.now(),
            CricketPart::Valley => chalkcourse_words::takeoff::VALLEYS_OF_CRICKETS.now(),
            CricketPart::Wall => chalkcourse_words::takeoff::LINES_OF_CRICKETS_AT_THEIR.now(),
        }
        .to_owned(),
        Measure::Pipe { .. } => chalkcourse_words::takeoff::PIPES_OF_THIS_SIZE.now().to_owned(),
        Measure::CurbCourse => {
            chalkcourse_words::takeoff::COURSES_BESIDE_CHIMNEYS_AND_SKYLIGHTS.now().to_owned()
        }
        Measure::CurbWidth => chalkcourse_words::takeoff::LOWER_AND_UPPER_SIDES_OF.now().to_owned(),
        Measure::WindFastener => chalkcourse_words::takeoff::EXTRA_FASTENERS_FOR_WIND.now().to_owned(),
        // What is said of the noun takes the plural too.
        Measure::Edge(EdgeKind::Rake) => chalkcourse_words::takeoff::RAKES.now().to_owned(),
        // A part keeps its number as it is.
        Measure::Part(number) => number.clone(),
        _ => plural(noun(measure), count),
    }
}
