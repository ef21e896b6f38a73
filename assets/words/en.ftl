language-name = English
language-code = en

## Filling faces and moving blocks, in the window

arrange-fill-with-modules = Fill with modules
arrange-fill = Fill
arrange-fill-this-face = Fill this face
arrange-fill-all-faces = Fill all faces

# $key (text)
arrange-all-faces-that-are-steep = All faces that are steep enough for the kit, one after the other.  ({ $key }, with nothing selected)
arrange-the-most-modules-that-the = The most modules that the rules allow. Locked blocks stay; the others on the face make way. Undo takes it back.
arrange-puts-the-most-modules-on = Puts the most modules on a face that the rules of this job allow, proves it, and lists what holds it back. Select a face to fill only that one.
arrange-laid-as = How rows lie
arrange-either-way = either way
arrange-blocks-at-most = Blocks at most
arrange-every-corner-of-a-block = Every corner of a block is flashed: fewer blocks, fewer corners.
arrange-what-a-module-earns-after = What a module earns, less its own cost. A run of flashing and a corner cost what the price list says, so a module that does not pay for them is left out.
arrange-weigh-by-the-area-of = Weigh by the area of the face
arrange-a-module-counts-whole-on = A module counts in full on the largest face that is filled, and by half on a face half as large.
arrange-size-by = Size by
arrange-kilowatts = kilowatts
arrange-how-many-modules = How many modules
arrange-kilowatts-2 = Kilowatts
arrange-on-all-faces-that-are = On all faces that are filled together, with those in locked blocks there.
arrange-as-2 = As
arrange-compact-as-can-be = compact as can be
arrange-cheap-as-can-be = cheap as can be
arrange-the-faces-that-are-ticked = The faces that are checked in the list, one after the other.
arrange-no-layout-found-yet = No layout found yet.
arrange-drawn-on-the-roof-not = Drawn on the roof, not placed yet. It goes on until this is proved best; Stop places what is there.
arrange-looking-for-what-holds-it = Looking for what holds it back…
arrange-stop-looking = Stop looking
arrange-keep-what-was-found-of = Keep what has been found so far about what holds the array back.
arrange-being-looked-for = Being looked for…
arrange-not-looked-for-to-the = Not looked for to the end: fill the face again to know.
arrange-not-looked-for-to-the-end = Not looked for to the end: there may be more.
arrange-stop = Stop
arrange-take-the-best-that-was = Take the best that was found so far, where it is better than what is there.
arrange-what-was-searched = What was searched
arrange-what-holds-it-back = What holds it back
arrange-nothing-but-the-size-of = Nothing but the size of the face.
arrange-there-is-no-face-to = There is no face to fill yet: draw one first.
arrange-the-roof-changed-while-it = The roof changed while it was being filled, so the answer was dropped. Fill it again.
arrange-stopped-before-anything-better-than = Stopped before anything better than what is there was found: the blocks are as they were.
arrange-filling-broke-off-by-itself = Filling stopped by itself: a fault in this program. The job is as it was; try another way of laying it out.
arrange-all-that-the-kit-allows = all that the kit allows
arrange-half-lapped-rows = half-lapped rows
arrange-rows-on-the-courses-one = rows on the courses, one block
arrange-whole-blocks = whole blocks
arrange-by-worth = by worth
arrange-to-a-number = to a number

# $filled (text)
# $blocks (text)
# $count (number)
arrange-filled-in-place-of =
    { $count ->
        [one] { $filled }; block { $blocks } made way
       *[other] { $filled }; blocks { $blocks } made way
    }

arrange-free = free
arrange-in-line = in line
arrange-by-the-courses = by the courses

# $ways (text)
# $joints (text)
# $rail (text)
arrange-the-kit-allows-modules-joints = The kit allows modules { $ways }, joints of rows { $joints }, the base rail { $rail }.

# $currency (text)
arrange-a-modules-worth = A module's worth, { $currency }

arrange-type-a-number-above-0 = Type a number above 0, such as 12.5.
arrange-choose-several-faces = Choose several faces

# $count (number)
arrange-faces-chosen =
    { $count ->
        [one] { $count } face chosen
       *[other] { $count } faces chosen
    }

# $count (number)
arrange-fill-chosen-faces =
    { $count ->
        [one] Fill the chosen face
       *[other] Fill { $count } chosen faces
    }

# $of_most (text)
arrange-so-far = So far { $of_most }

# $modules (text)
# $most (text)
arrange-of-at-most = { $modules } of at most { $most }

arrange-what-was-found-against-the = What was found against the most that there can be: when the bar is full, nothing is left to find. Nobody can say beforehand how long that takes; Stop places what there is.

# $value (text)
# $bound (text)
arrange-not-proved-between-and-something = Not proved: between { $value } and { $bound } something better may exist.

# $open (text)
# $modules (text)
arrange-not-proved-up-to-more = Not proved: up to { $open } more { $modules } may be possible.

# $words (text)
arrange-costs-modules = Costs modules: { $words }

# $words (text)
arrange-would-win = Would win: { $words }

# $words (text)
arrange-nearly-fits = Nearly fits: { $words }

# $sentence (text)
arrange-do-this-undo-takes-it = Do this; undo takes it back. Then fill the face again. { $sentence }

# $name (text)
arrange-fill-2 = Fill { $name }

# $one (text)
# $since (text)
arrange-filling = Filling { $one }{ $since }…

# $names (text)
# $since (text)
arrange-filling-faces = Filling { $names } faces{ $since }…

# $fill (text)
arrange-fill-3 = fill { $fill }

# $fills (text)
arrange-fill-faces = fill { $fills } faces

# $of_most (text)
arrange-filled = Filled: { $of_most }

# $fills (text)
# $of_most (text)
arrange-filled-faces = Filled { $fills } faces: { $of_most }

# $places (text)
# $words (text)
arrange-at-places = At { $places } places { $words }

arrange-make-room = Make room
arrange-move-it-the-least-distance = Move it the least distance that clears its findings.
arrange-nothing-is-in-its-way = Nothing is in its way.
arrange-no-move-was-found-that = No move was found that clears this block: make it smaller, or move what is in its way.
arrange-the-roof-changed-while-room = The roof changed while room was looked for, so the answer was dropped. Press R again.
arrange-stopped-before-a-place-was = Stopped before a place was found: the block is as it was.
arrange-the-search-for-room-broke = The search for room stopped by itself: a fault in this program. The job is as it was.
arrange-end-the-search-with-the = End the search with the nearest place found so far.
arrange-mirror = Mirror
arrange-a-mirror-image-on-the = A mirror image on the slope beyond the ridge.
arrange-its-face-shares-no-ridge = Its face shares no ridge with another face.
arrange-copy-to-face = Copy to face
arrange-copy-to-a-face = Copy to a face…
arrange-there-is-no-other-face = There is no other face.
arrange-it-cant-be-copied-there = It can't be copied there: mend the outlines of both faces first.
arrange-split = Split
arrange-a-cut-there-leaves-nothing = A cut there leaves nothing on one side.
arrange-join = Join
arrange-no-block-is-flush-with = No block is flush with it: they must touch, lie the same way, and have the same reveal and rows in line.
arrange-align = Align
arrange-there-is-no-other-block = There is no other block with modules on this face.
arrange-select-a-block-first = Select a block first.

# $name (text)
arrange-making-room-for = Making room for { $name }…

arrange-the-least-that-clears-it = the least that clears it, proved
arrange-the-least-that-was-found = the least that was found, not proved

# $name (text)
# $way_words (text)
# $sure (text)
arrange-moved = { $name } moved { $way_words }: { $sure }

arrange-up-the-slope = up the slope
arrange-down-the-slope = down the slope
arrange-not-at-all = not at all
arrange-spread-along-the-eave = Spread along the eave
arrange-spread-up-the-slope = Spread up the slope

# $face (text)
arrange-spread-the-blocks-of = spread the blocks of { $face }

arrange-spread = Spread
arrange-equal-gaps-between-the-blocks = Equal gaps between the blocks of this face; the first and the last stay put.
arrange-nothing-to-spread-it-takes = Nothing to spread: it takes three blocks on the face that are not locked, with room between the outer ones, and gaps that differ.
arrange-left-end-with-the-nearest = Left end with the nearest block
arrange-right-end-with-the-nearest = Right end with the nearest block
arrange-base-rail-with-the-nearest = Base rail with the nearest block

# $name (text)
arrange-copy-to = Copy { $name } to

# $face (text)
arrange-mirror-to = Mirror to { $face }

# $rows (text)
arrange-row = row { $rows }

# $columns (text)
arrange-column = column { $columns }

arrange-right-of = right of
arrange-left-of = left of
arrange-above = above
arrange-below = below

# $name (text)
arrange-left-end-with = left end with { $name }

# $name (text)
arrange-right-end-with = right end with { $name }

# $name (text)
arrange-base-rail-with = base rail with { $name }

# $name (text)
arrange-make-room-for = make room for { $name }

# $name (text)
arrange-mirror-2 = mirror { $name }

# $name (text)
arrange-copy = copy { $name }

# $name (text)
arrange-split-2 = split { $name }

# $name (text)
arrange-join-2 = join { $name }

# $name (text)
arrange-align-2 = align { $name }

## The drawing

canvas-pipe-boot = Pipe boot
canvas-vent = Vent
canvas-skylight = Skylight
canvas-escape-window = Escape window
canvas-what-the-lines-mean = What the lines mean
canvas-inside-modules-may-stand = modules may stand inside
canvas-not-for-the-lowest-row = not for the lowest row
canvas-parallel-to-a-side-drawn = parallel to a side drawn before

# $name (text)
canvas-parallel-to-a-side-of = parallel to a side of { $name }

canvas-square-to-a-side-drawn = square to a side drawn before

# $name (text)
canvas-square-to-a-side-of = square to a side of { $name }

canvas-press-to-type-another-length = Press to type another length: the block moves there
canvas-press-to-type-another-length-the = Press to type another length: the end of this side moves along it
canvas-from-the-left-border-to = From the left border to the block
canvas-from-the-block-to-the = From the block to the right border
canvas-from-the-lower-border-to = From the lower border to the block
canvas-from-the-block-to-the-upper = From the block to the upper border

# $side (text)
canvas-length-of-side = Length of side { $side }

canvas-hold-all-blocks-and-penetrations = Select all blocks and penetrations

# $what (text)
canvas-copied = On the clipboard: { $what }. Paste it on another place or face, or in another window.

canvas-nothing-to-copy = Select a block or a penetration first.

# $begins (text)
canvas-clipboard-has-other-text = The clipboard has no block and no penetration, but the text “{ $begins }”. Copy one first.

# $why (text)
canvas-what-was-copied-cant-be = What is on the clipboard can't be set down here: { $why }

canvas-a-click-sets-it-down = Click a face to set it down, or Enter for the middle of the face that is selected. Esc puts it away.
canvas-it-does-not-fit-on = There is no room for it on this face here: it would hang over the edge.
canvas-no-room-beside-it = There is no room beside it on this face. Copy it, and paste it elsewhere.
canvas-drag-one-of-them-and = Drag one of them and all move, or use the arrow keys. With Shift a click or a box takes more, and lets go.
canvas-switch-these-modules-on = Switch these modules on
canvas-switch-these-modules-off = Switch these modules off
canvas-delete-all-of-these = Delete all of these
canvas-blocks = blocks
canvas-penetrations = penetrations
canvas-select-drag-switch-modules = Select, drag, switch modules
canvas-draw-a-face-of-the = Draw a whole roof over its walls, a part of the house, or a single face
canvas-mark-what-comes-through-the = Mark what comes through the roof
canvas-place-a-block-of-modules = Place a block of modules on a face
canvas-measure = Measure
canvas-whole-roof = Whole roof
canvas-part = Part
canvas-hole = Hole
canvas-penetration-outline = Penetration outline
canvas-a-face-of-the-roof = A face of the roof, corner by corner
canvas-draw-the-walls-the-roof = Draw the walls: the roof is raised over them, all of one pitch
canvas-a-courtyard-a-shaft-or = A courtyard, a shaft or a dormer's foot: its rim counts as a wall line
canvas-a-penetration-that-is-neither = A penetration that is neither round nor square, drawn by its own outline
canvas-raise-a-roof = raise a roof
canvas-gables = Gables
canvas-hips = Hips
canvas-walls = Walls
canvas-how-far-the-roof-reaches = How far the roof reaches beyond the walls, in plan; 1' is usual
canvas-height-of-the-roof-over = Height of the roof over the walls; 9' is usual for one story
canvas-this-cant-be-less-than = This can't be less than 0: type 0 or more.

# $part (text)
canvas-draw-a-courtyard-in = draw a courtyard in { $part }

# $face (text)
canvas-draw-a-hole-in = draw a hole in { $face }

canvas-choose-draw-face-to-begin = Choose “Draw roof” to begin.
canvas-next-choose-block-and-press = Next: choose “Block” and press on a face. Penetrations first, if you know them.
canvas-drag-blocks-vents-and-corners = Drag blocks, vents and corners. Double-click switches a module. Ctrl or Alt drags without snapping.
canvas-click-the-first-corner-for = Click the first corner. For a face begin at the eave if you can.
canvas-click-or-type-a-length = Click, or type a length and Enter.
canvas-click-the-first-corner-to = Click the first corner to close.
canvas-choose-a-kind-and-click = Choose a kind and click its middle on the roof, or press Enter and move it with the arrow keys.
canvas-click-a-face-for-3 = Click a face for 3 rows of 4, or drag out the room that it may fill. Enter places one too.
canvas-drag-from-one-place-to = Drag from one place to another.
canvas-click-one-corner-or-press = Click one corner, or press and pull the rectangle open.
canvas-click-the-corner-across-or = Click the corner across, or type the size and Enter.
canvas-click-the-inner-corner-or = Click the inner corner, or type the size of the notch and Enter.

# $degrees (text)
canvas-out-of-square = { $degrees }° out of square

# $name (text)
canvas-square = Square { $name }

canvas-corner-by-corner = Corner by corner
canvas-l = L
canvas-t = T
canvas-any-outline-shift-holds-right = Any outline. Shift holds right angles; type a length and an angle.
canvas-two-corners-or-one-and = Two corners, or one and a size such as 30' x 48'. Pressing and pulling makes one too.
canvas-a-rectangle-then-the-inner = A rectangle, then the inner corner of what is not there.
canvas-a-rectangle-then-one-of = A rectangle, then one of its two inner corners; the other is its mirror image.

# $kind (text)
canvas-at-the = at the { $kind }

# $setback (text)
# $kind (text)
canvas-from-the-its-setback = { $setback } from the { $kind }: its setback

# $number (text)
canvas-on-course-line = on course line { $number }

# $name (text)
canvas-just-clear-of = just clear of { $name }

# $name (text)
canvas-flush-with = flush with { $name }

# $block_name (text)
canvas-just-clear-of-2 = just clear of { $block_name }

# $reveal (text)
# $block_name (text)
canvas-reveal-to = { $reveal } reveal to { $block_name }

canvas-the-same-gap-on-both = the same gap on both sides

# $number (text)
canvas-its-middle-on-course-line = its middle on course line { $number }

# $name (text)
canvas-in-line-with-the-middle = in line with the middle of { $name }

canvas-as-far-as-the-rows = as far as the rows still hook
canvas-the-blocks-corner = the block's corner
canvas-the-row-below = the row below

# $below (text)
canvas-in-line-with = in line with { $below }

# $below (text)
canvas-half-a-module-against = half a module against { $below }

# $below (text)
canvas-module-against = 1 module against { $below }

# $value (number)
# $below (text)
canvas-modules-against = { $value ->
        [one] { $value } module against
       *[other] { $value } modules against
    } { $below }

# $value (text)
# $below (text)
canvas-modules-against-2 = { $value } 1/2 modules against { $below }

# $name (text)
canvas-corner-of = corner of { $name }

# $name (text)
canvas-on-a-side-of = on a side of { $name }

# $name (text)
canvas-in-line-with-a-corner = in line with a corner of { $name }

# $name (text)
canvas-face-on-true-size-eave = { $name }, true size: eave down

# $name (text)
canvas-block = Block { $name }

# $block_name (text)
# $modules (number)
canvas-modules = { $block_name } · { $modules ->
        [one] { $modules } module
       *[other] { $modules } modules
    }

# $length (text)
canvas-in-plan = { $length } in plan

# $on_slope (text)
# $part (text)
# $part2 (text)
# $in_plan (text)
canvas-on-the-slope-along-up = { $on_slope } on the slope ({ $part } along, { $part2 } up), { $in_plan } in plan

# $from (text)
# $from2 (text)
canvas-from-the-left-up = { $from } from the left, { $from2 } up

# $at (text)
# $at2 (text)
canvas-east-north = { $at } east, { $at2 } north

# $job (text)
canvas-drawing-of-plan = Drawing of { $job }, plan

# $job (text)
# $name (text)
canvas-drawing-of-face-face-on = Drawing of { $job }, face { $name } by itself

# $name (text)
# $pitch (text)
# $area (text)
canvas-face-pitch-on-the-slope = { $name }, pitch { $pitch }, { $area } on the slope

# $block_name (text)
# $rows (number)
# $columns (text)
# $modules (number)
canvas-rows-of-modules = { $block_name }, { $rows ->
        [one] { $rows } row of
       *[other] { $rows } rows of
    } { $columns }, { $modules ->
        [one] { $modules } module
       *[other] { $modules } modules
    }

canvas-switched-off = , switched off

# $row (text)
# $column (text)
# $state (text)
canvas-module-row-column = Module row { $row }, column { $column }{ $state }

# $corner (text)
canvas-corner = Corner { $corner }

# $kind (text)
canvas-chosen = { $kind } (chosen)

# $side (text)
canvas-kind-of-side = Kind of side { $side }

# $row (text)
canvas-row = Row { $row }

# $usual (text)
canvas-the-rule-book-says = The rule book says { $usual }.

# $text (text)
canvas-cant-read-as-a-direction = can't read { $text } as a direction: type degrees clockwise from north, such as 180, or S

## The command line

# $to (text)
commandline-saved-as =
    Saved as { $to }.
    {""}

commandline-nothing-was-saved =
    Nothing was saved.
    {""}

commandline-new-roof = New roof

# $to (text)
commandline-save-would-write-over-the = --save { $to } would write over the edits: name another file

# $to (text)
commandline-save-would-write-over-the-job = --save { $to } would write over the job: name another file, or say --in-place (the version before is kept as .previous)

# $to (text)
commandline-in-place-says-that-save = --in-place says that --save names the job itself, and { $to } is another file

commandline-no-fix-is-offered =
    No fix is offered.
    {""}

# $key (text)
commandline-nothing-is-found-by-the = nothing is found by the key { $key }: take one from `check`

commandline-about = The pipeline without a screen: checks, counts and reports a roof with deck-mounted solar.
commandline-exit-status = Exit status: 0 when all is fine, 1 when a finding to stop for is not waived, 2 for input that can't be used.
commandline-cant-write-to-the-screen = can't write to the screen
# $name (text)
# $known (text)
commandline-no-format = there is no format { $name }; choose one of { $known }

commandline-say-where-the-file-goes = this format is not text: say with --out where the file goes
# $path (text)
commandline-is-written = { $path } is written

# $file (text)
commandline-cant-read-it = { $file }: can't read it

# $file (text)
# $name (text)
# $known (text)
commandline-no-outline-is-named = { $file }: no outline is named { $name }; there are { $known }

commandline-write-a-side-as = write it as 3=gable, 3=wall or 3=8:12,eave=10 ft,overhang=2 ft
# $counts (text)
commandline-no-such-side = there is no such side: the rings of this outline have { $counts } sides

# $other (text)
# $form (text)
commandline-no-measure-of-a-side = { $other } is not a measure of a side: { $form }

commandline-name-the-job-file = name the job file to write with --out
# $file (text)
commandline-at-names-the-place = { $file }: --at names the place

# $path (text)
# $bytes (text)
commandline-bytes-written = { $path }: { $bytes } bytes written

# $text (text)
commandline-cant-read-a-place = can't read { $text }: latitude from -85 to 85, a comma, longitude from -180 to 180 in degrees

commandline-name-a-form = name a form: --triangle, --rectangle, --parallelogram, --trapezoid or --polygon
commandline-downslope-degrees = --downslope: give degrees clockwise from north, such as 180
commandline-nothing-checks = Nothing checks these readings: one more diagonal would.
# $error (text)
# $spare (text)
commandline-closing-error = Closing error { $error } with { $spare } spare, spread over all readings by least squares.

# $reading (text)
commandline-if-one-was-misread = If one was misread, it is most likely { $reading }.

# $file (text)
# $name (text)
# $known (text)
commandline-no-face-is-named = { $file }: no face is named { $name }; there are { $known }

commandline-number-needs-modules = --mode number needs --modules or --kilowatts
# $file (text)
# $least (text)
# $known (text)
commandline-no-face-is-as-steep = { $file }: no face is as steep as the kit asks, { $least }; the faces are { $known }

commandline-no-roof-to-show = there is no roof to show: no face of the job has a sound outline
# $path (text)
# $wide (text)
# $high (text)
# $from (text)
# $above (text)
commandline-picture-written = { $path }: { $wide } × { $high } pixels, from { $from } and { $above }° above level

commandline-no-day-was-asked-for = no day was asked for: the light is not the sun's
# $date (text)
commandline-is-no-day = { $date } is not a day: write it as 2026-06-21

commandline-place-is-not-known = where the house stands is not known: give --latitude and --longitude in degrees
# $hour (text)
commandline-is-no-hour = an hour is from 0 to 24, not { $hour }

# $azimuth (text)
# $elevation (text)
commandline-sun-at = sun at { $azimuth }, { $elevation }° above level

commandline-the-sun-is-down = the sun is down
# $text (text)
# $most (text)
commandline-is-no-size = { $text } is not a size: write it as 1600x1000, each from 1 to { $most }

# $text (text)
# $what (text)
commandline-write-it-as-number = { $text }: write it as NUMBER={ $what }

# $text (text)
# $count (text)
commandline-no-number-of-packages = { $text }: { $count } is not a number of packages

# $code (text)
# $known (text)
commandline-no-choice = the kit has no choice { $code }; it has { $known }

# $number (text)
commandline-no-part = the kit has no part { $number }

# $number (text)
commandline-does-not-come-back = { $number } does not come back from a job: put it in stock

# $text (text)
# $percent (text)
commandline-is-no-percentage = { $text }: { $percent } is not a percentage

commandline-by-the-command-line = command line

commandline-examples-of-edits = Examples of edits:
commandline-how-edits-name-things =
    Things are named by number or name, corners and sides count from 1, a number without a unit is in meters. A session drawn in the window can be
    saved as such a file (Export, Steps since opening as edits) and done again on the job as it was opened.

# $slope (text)
# $plan (text)
# $pitch (text)
commandline-area-of-the-face = { $slope } ft² on the slope, { $plan } ft² in plan at { $pitch }

# $file (text)
# $known (text)
commandline-no-such-block = { $file }: there is no such block; there are { $known }

# $file (text)
# $block (text)
commandline-not-four-corners = { $file }: the face of block { $block } does not have four corners: give --eave, --head, --rakes and --diagonals

# $line (text)
commandline-write-a-line-as = --line { $line }: write it as "1-3=25 ft" or "up-3=12 ft"

commandline-about-the-import = About the import

## Help of the command line

commandline-help-the-job-file-the-word = The job file; the word `new` for a job without a roof.
commandline-help-the-edits-one-or-a = The edits: one, or a list, as JSON; `-` reads them from what is piped to the command.
commandline-help-writes-the-job-after-them = Writes the job with the edits made. Without it nothing is written: the answer says what would change.
commandline-help-lets-save-name-the-job = Lets --save name the job file itself; the version before is kept beside it as `.previous`.
commandline-help-leaves-out-an-edit-that = Skips an edit that can't be done and goes on with the next, instead of writing nothing. The exit status is 2 even so.
commandline-help-writes-the-answer-there-instead = Writes the answer there instead of to the screen.
commandline-help-prints-the-json-schema-of = Prints the JSON Schema of edits, with a few words about each.
commandline-help-the-face-by-its-name = The face, by name; all faces if none is named.
commandline-help-the-least-and-the-greatest = The least and the greatest exposure that the shingle allows. Without it, from seven eighths of the face's own exposure up to all of it.
commandline-help-the-block-by-its-name = The block, by name; the first one if none is named.
commandline-help-along-the-eave-from-corner = Along the eave, from corner to corner. What is not given is taken from the job: as measured, or else as drawn.
commandline-help-along-the-head-the-ridge = Along the head: the ridge or the upper edge.
commandline-help-up-the-left-and-the = Up the left and the right rake.
commandline-help-from-the-left-end-of = From the left end of the eave up to the right end of the head, and from its right end up to the left.
commandline-help-how-far-eave-head-left = How far eave, head, left and right rake bow into the deck at their middle; with a minus out of it.
commandline-help-what-the-base-line-is = What the base line is parallel to.
commandline-help-the-base-line-above-the = The base line above the eave at its lower end; as in the job where it is not given.
commandline-help-modules-in-each-row-as = Modules in each row; as in the block where it is not given.
commandline-help-how-much-a-module-may = How much larger or smaller a module may be.
commandline-help-how-far-a-reveal-may = How far off a reveal may be set.
commandline-help-the-eave = The eave.
commandline-help-the-head-so-that-the = The head, so that the courses above come out even.
commandline-help-halfway = Halfway.
commandline-help-how-the-array-is-laid = How the array is laid.
commandline-help-the-face-by-its-name-2 = The face, by name; give it again for several. All faces that the kit allows if none is named.
commandline-help-with-mode-whole-blocks-at = With --mode whole-blocks: at most this many rectangles on a face.
commandline-help-with-mode-worth-what-a = With --mode worth: what a module is worth, less its own cost, in the currency of the price list.
commandline-help-with-mode-worth-a-module = With --mode worth: a module counts by the area of its face, in full on the largest one.
commandline-help-with-mode-number-just-so = With --mode number: exactly this many modules, counting those in locked blocks.
commandline-help-with-mode-number-the-fewest = With --mode number: the fewest modules that together have this rated power.
commandline-help-with-mode-number-what-the = With --mode number: what the array should be like.
commandline-help-lets-modules-lie-one-way = Lets modules lie one way only, where the kit allows both.
commandline-help-goes-on-proving-for-so = Keeps proving for at most this many seconds, and says what gap is left; the same again to find what holds it back.
commandline-help-leaves-out-what-holds-it = Does not list what holds it back.
commandline-help-writes-the-job-with-the = Writes the job with the array in place.
commandline-help-rows-and-columns-in-line = Rows and columns in line; the grid may lie anywhere.
commandline-help-the-usual-way-all-that = The usual way, all that the kit allows: in one block or several, rows that slide and hook as far as the book asks.
commandline-help-every-other-row-half-a = Every other row shifted by half a module.
commandline-help-rows-that-slide-in-one = Rows that slide in one block, with the base rail where the kit allows it above a course line.
commandline-help-rectangles-alone = Rectangles only.
commandline-help-the-modules-that-are-worth = The modules that are worth most, less what the flashing around them costs.
commandline-help-a-number-of-modules-or = A number of modules or a size in kilowatts.
commandline-help-the-long-side-along-the = The long side along the eave.
commandline-help-the-long-side-up-the = The long side up the slope.
commandline-help-the-least-length-around-it = The shortest edge around it.
commandline-help-the-least-cost-of-flashing = The least cost of flashing around it.
commandline-help-the-job-file = The job file.
commandline-help-the-key-of-the-finding = The key of the finding, as `check` gives it: its best fix is done.
commandline-help-does-fix-after-fix-stops = Does fix after fix, stops first, until none is offered.
commandline-help-writes-the-job-after-it = Writes the job with the fix made. Without it nothing is written: the answer says what would change.
commandline-help-a-geojson-rfc-7946-or = A GeoJSON (RFC 7946) or CityJSON 1.1 or 2.0 file (.city.json, .city.jsonl), or a folder of them.
commandline-help-lists-the-buildings-that-are = Lists the buildings that are there.
commandline-help-which-building-by-its-id = Which building, by its id in the list; the only one if none is named.
commandline-help-where-the-job-is-written = Where the job is written.
commandline-help-as-what = Which format.
commandline-help-where-it-is-written = Where it is written.
commandline-help-for-geojson-latitude-and-longitude = For GeoJSON: latitude and longitude of the plan's origin, where the job does not have them: 39.1,-84.5
commandline-help-faces-penetrations-and-modules-in = Faces, penetrations and modules in longitude and latitude (RFC 7946).
commandline-help-the-plan-as-a-drawing = The plan as a drawing (SVG 1.1).
commandline-help-the-plan-and-each-face = The plan and each face with the lines to snap, to print (PDF).
commandline-help-the-house-with-modules-and = The house with modules and penetrations as glTF 2.0 in one binary file.
commandline-help-wire-diagram = Each block face-on with its wires: PDF, or a drawing (SVG) where the file ends in .svg.
commandline-help-labels = The labels that the code asks for, at full size, with where each goes. PDF.
commandline-help-one-line = The one-line diagram: PDF, or a drawing (SVG) where the file ends in .svg.
commandline-help-handover = The handover sheet for the electrician: what a meter should show, and fields to fill in. PDF.
commandline-help-the-language-of-reports-orders = The language of reports, orders and sheets. What a program reads (keys, codes, column names) is the same in each.
commandline-help-says-what-the-rule-book = Checks the job against its rule book and lists the findings.
commandline-help-says-of-each-finding-what = For each finding, says what would clear it: each fix was tried, and leaves fewer findings of its weight and no new one.
commandline-help-clears-a-finding-by-the = Clears a finding by the best fix that was found for it, or all that have one.
commandline-help-lists-what-to-order-with = Lists what to order, with where each quantity comes from in JSON.
commandline-help-tells-what-one-order-has = Says what one order has more or less of than another, and what that costs.
commandline-help-prices-one-order-at-several = Prices one order at several suppliers.
commandline-help-prints-the-pallet-list-to = Prints the pallet list to count on, or takes counts and says what is short and what can start.
commandline-help-reports-roof-blocks-findings-and = Reports roof, blocks, findings and quantities.
commandline-help-fills-faces-with-the-array = Fills faces with the array that no layout under the same rules can beat, with the proof, and says what holds it back.
commandline-help-does-edits-of-a-file = Makes the edits in a file to a job: all that the window can do. Says for each what it changed.
commandline-help-tells-the-courses-of-faces = Lists the courses on each face: where base rails fall, what is left at the ends, and exposures or places that leave whole courses.
commandline-help-from-field-measurements-how-far = From field measurements: how far out of square a deck is, whether a row closes, what reveal to set, and where to snap the line.
commandline-help-draws-the-house-with-its = Draws the house with its array as a PNG picture, in the sun on a given day or in even light.
commandline-help-makes-a-job-from-a = Makes a job from a footprint: a part of a house that can still be edited, with a pitch, a gable or a wall on each side.
commandline-help-a-geojson-file-rfc-7946 = A GeoJSON file (RFC 7946) with the outline of the walls.
commandline-help-what-stands-on-one-side = What is on one side, where it is not the same as on the others: `3=gable`, `3=wall`, `3=8:12`; with its own eave height and overhang, `3=8:12,eave=10 ft,overhang=2 ft`. Sides count from 1 at the first corner of the outline, `2.1` is the first side of the first courtyard. Can be given more than once.
commandline-help-which-outline-of-the-file = Which outline in the file, by name; the first one if none is named.
commandline-help-reports-the-roof-faces-edges = Reports the roof: faces, edges by kind, squares, footprint, heights.
commandline-help-wires = Tells the circuits: order of plugging, extension leads, ways home, volts and amperes; strings modules automatically
commandline-help-wires-automatically = Makes all circuits anew: as few as inverter and devices allow, then as few extension leads, then the least cable, and tells what is proved
commandline-help-lists-the-buildings-of-a = Lists the buildings of a GeoJSON or CityJSON file or folder, or makes a job from one of them.
commandline-help-writes-the-plan-as-geojson = Writes the plan as GeoJSON for a map, or the house as glTF for a 3-D program.
commandline-help-makes-a-job-or-adds = Makes a job, or adds to one, with a face from side lengths, diagonals and pitch as taped on the deck.
commandline-help-prints-the-crews-checklist-work = Prints the crew's checklist: work safety, and what the roof as drawn asks for.
commandline-help-pdf-is-to-print-and = pdf is to print, and written to the file that --out names.
commandline-help-lists-the-fields-in-which = Lists the fields in which two rule books differ, with what each says.
commandline-help-a-rule-book-file = A rule book file.
commandline-help-another-one = The other rule book.
commandline-help-prints-the-json-schema-of-2 = Prints the JSON Schema of a file format.
commandline-help-which-one-job-kit-rule = Which one: job, kit, rule-book, price-list, edits, applied, findings, plan, takeoff, roof.
commandline-help-writes-there-instead-of-to = Writes there instead of to the screen.
commandline-help-xlsx-and-pdf-are-written = xlsx and pdf are written to the file that --out names.
commandline-help-how-text-and-pdf-are = How text and pdf are sorted.
commandline-help-another-price-list-json-csv = Another price list: JSON, CSV or a workbook.
commandline-help-a-warehouse-list-csv-or = A warehouse list, CSV or JSON: what is in stock is used first.
commandline-help-switches-a-line-off-numberwhy = Takes a line off the order: NUMBER=WHY.
commandline-help-orders-so-many-packages-whatever = Orders this many packages, whatever the count: NUMBER=PACKAGES.
commandline-help-takes-one-of-the-kits = Takes one of the kit's choices with the order: CODE, such as spare-module, primer, ridge-vent, hoist, rope, permit.
commandline-help-the-office-has-its-own = The office has its own of this gear, which comes back from the job: NUMBER.
commandline-help-the-offices-own-waste-in = The office's own waste, in percent, and who said so: NUMBER=PERCENT:WHY.
commandline-help-writes-the-job-with-these = Writes the job with these prices, this stock and these decisions.
commandline-help-a-job-file = A job file.
commandline-help-another-one-a-later-version = The other job, such as a later version of the same one.
commandline-help-price-lists-json-csv-or = Price lists: JSON, CSV or workbooks.
commandline-help-text-is-the-claim-csv = text is the claim, csv the pallet list to fill in; pdf is the pallet list to check off and claim-pdf the claim, both to print and written to the file that --out names.
commandline-help-a-pallet-list-with-the = A pallet list with the column `counted` filled in, and `damaged` and `note` where there is something to say.
commandline-help-writes-the-job-with-these-2 = Writes the job with these counts.
commandline-help-what-a-part-belongs-to = The group that a part belongs to.
commandline-help-the-stage-of-work-that = The stage of work that it is needed for.
commandline-help-where-the-png-file-is = Where the PNG file is written.
commandline-help-the-way-from-the-house = The direction from the house to the eye: degrees clockwise from north.
commandline-help-how-far-above-level-the = How far above level the eye is, in degrees.
commandline-help-wide-and-high-in-pixels = Width and height, in pixels.
commandline-help-the-house-as-it-was = The house as it was before, without the array.
commandline-help-a-day-with-hour-and = A day, with --hour and a place: the sun as it stands then. Without it the light comes over the left shoulder.
commandline-help-the-hour-by-the-clock = The hour by the clock, 14.5 for half past two.
commandline-help-degrees-north-of-the-equator = Degrees north of the equator, if the job does not say, or for another place.
commandline-help-degrees-east-of-greenwich = Degrees east of Greenwich.
commandline-help-how-many-hours-the-clock = How many hours the clock is ahead of UTC; worked out from the longitude if not given.
commandline-help-pitch-of-all-sloped-sides = Pitch of all sloped sides.
commandline-help-height-of-the-roof-over = Height of the roof over the walls.
commandline-help-how-far-the-roof-reaches = How far the roof reaches beyond the walls, in plan.
commandline-help-gables-at-the-short-ends = Gables at the short ends instead of hips.
commandline-help-a-triangle-by-its-eave = A triangle by its eave and the sides right and left of it.
commandline-help-a-rectangle-by-its-eave = A rectangle by its eave and how far it goes up the slope.
commandline-help-a-parallelogram-by-its-eave = A parallelogram by its eave, its right side, and the diagonal from the eave's left end.
commandline-help-a-trapezoid-by-its-sides = A trapezoid by its sides, counter-clockwise from the eave.
commandline-help-any-outline-by-its-sides = Any outline by its sides, counter-clockwise from the eave; with --line for its diagonals.
commandline-help-a-diagonal-or-another-check = A diagonal or another check: "1-3=25 ft" between two corners (corner 1 is the eave's left end, and so on counter-clockwise), "up-3=12 ft" from the eave straight up the slope to a corner.
commandline-help-the-most-by-which-a = The most that one reading may be corrected by, where the readings don't quite close.
commandline-help-612-266-50-or-a = 6:12, 26.6°, 50%, or a level reading: "12 in over 24 in".
commandline-help-the-way-that-water-runs = Which way the water runs: degrees clockwise from north.
commandline-help-height-of-the-eave = Height of the eave.
commandline-help-what-the-face-is-called = What the face is called.
commandline-help-a-job-that-gets-the = A job that gets the face, laid beside what it has; a new job if none is named.

## Said in several places

# $count (number)
common-modules =
    { $count ->
        [one] { $count } module
       *[other] { $count } modules
    }

common-modules-2 = modules
common-one-grid = one grid
common-half-lapped = half-lapped
common-anywhere = anywhere
common-or = {" "}or{" "}
common-module = module
common-a-face = a face
common-to-the-right = to the right
common-to-the-left = to the left
common-and = {" "}and{" "}
common-block = Block
common-course = course
common-courses = courses
common-chimney = Chimney
common-other = Other
common-block-2 = block
common-penetration = penetration
common-face = Face
common-overhang = Overhang
common-rectangle = Rectangle
common-save = Save
common-compare = Compare
common-order = Order
common-plan = Plan
common-kit = Kit
common-rule-book = Rule book
common-price-list = Price list
common-pallet-list = Pallet list
common-job = job
common-eave = eave
common-find = Find
common-on-the-slope = On the slope
common-in-plan = In plan
common-footprint-each-place-once = Footprint, each place once
common-ridge-height = Ridge height
common-eave-height = Eave height
common-close = Close
common-exposure = exposure
common-face-2 = face
common-gable = gable
common-hip = hip
common-how-far-the-roof-reaches = How far the roof reaches beyond the wall, in plan.
common-rake = rake
common-ridge = ridge
common-valley = valley
common-note = Note

# $currency (text)
common-total = Total, { $currency }

common-not-known = not known
common-save-as = Save as…
common-address = Address
common-load = Load…
common-pitch = Pitch
common-exposure-2 = Exposure
common-reveal = Reveal
common-from-the-left = From the left
common-no-price = no price
common-waived = Waived
common-delivery = Delivery
common-number = Number
common-what = What
common-need = Need
common-order-2 = Order
common-package = Package
common-price = Price
common-cost = Cost
common-by-group = By group
common-by-stage-of-work = By stage of work
common-copy = Copy
common-what-it-is = What it is
common-group = Group
common-profit = Profit
common-none = none
common-nothing-is-on-order = Nothing is on order.
common-date = Date
common-counted-by = Counted by
common-ordered = Ordered
common-came = Came
common-damaged = Damaged
common-what-can-start = What can start
common-can-start = can start
common-the-two-orders-are-alike = The two orders are alike, line by line.
common-main = Main
common-ell = Ell
common-fire-access = Fire access
common-wind-and-snow = Wind and snow
common-drip-edge = Drip edge
common-none-2 = none
common-fire-class = Fire class
common-source = Source
common-yes = yes
common-nothing = nothing
common-north = north
common-south = south
common-east = east
common-west = west
common-the-outline = the outline

# $ring (text)
common-hole = hole { $ring }

common-side = side
common-the-face = the face
common-inside-corner = inside corner

# $face (text)
common-face-3 = face { $face }

# $block (text)
common-block-3 = block { $block }

common-the-job = the job
common-roofing = Roofing
common-labour = Labor
common-chimney-2 = chimney
common-ice-barrier = Ice barrier
common-row = row

# $value (text)
common-the-job-has-no-face = the job has no face { $value }

# $value (text)
common-face-has-no-sound-outline = face { $value } has no sound outline yet: mend it first (see the findings)

# $length (text)
# $kind (text)
common-from-the = { $length } from the { $kind }

common-a-penetration = a penetration
common-short = Short
common-nothing-to-order-no-module = Nothing to order: no module is placed, or the kit has no parts.
common-switched-off-not-ordered = Switched off, not ordered
common-to-know-about-the-count = To know about the count
common-findings = Findings
common-waived-findings = Waived findings
common-cut-list = Cut list
common-crews = Crews
common-prices = Prices

# $name (text)
common-face-4 = Face { $name }

## Courses of shingles

coursing-courses-and-base-rail = Courses and base rail
coursing-face-on-they-are-drawn = With one face in view they are drawn always.
coursing-no-block-lies-on-this = No block lies on this face yet. Place one to see where its base rail falls among the courses.
coursing-this-block-has-no-modules = This block has no modules, or the outline of its face is not sound yet.
coursing-rail-on-a-course-line = Rail on a course line
coursing-it-is-on-one-now = It is on one now. Others near it:
coursing-move-it = Move it
coursing-use-it = Use it
coursing-an-exposure-that-brings-a = An exposure that brings a course line to the rail and to the top
coursing-exposure-from = Exposure from
coursing-exposure-to = Exposure to
coursing-what-the-shingle-may-be = What the shingle may be laid to: its package says so. 5" to 5 5/8" is usual (common practice, no source).
coursing-no-exposure-in-this-range = No exposure in this range brings a line to both to 1/16": move the block, or allow another range.

# $face (text)
coursing-change-the-courses-of = change the courses of { $face }

# $block (text)
# $course (text)
coursing-set-the-rail-of-on = set the rail of { $block } on course line { $course }

# $line (text)
coursing-on-course-line = on course line { $line }

# $small (text)
# $line (text)
coursing-above-course-line = { $small } above course line { $line }

coursing-below-the-first-course-line = below the first course line

# $up (text)
# $on_line (text)
coursing-base-rail-line-up-from = Base rail line { $up } up from the eave, { $on_line }.

# $up (text)
# $on_line (text)
# $small (text)
coursing-base-rail-line-up-from-the = Base rail line { $up } up from the eave, { $on_line }: { $small } of a course shows below it.

coursing-the-head-flashing-ends-on = The head flashing ends on a course line: the first course above it is whole.

# $small (text)
coursing-a-cut-course-shows-above = A cut course shows { $small } above the head flashing, up to the next course line.

# $whole_to_top (text)
# $courses (text)
coursing-whole-above-the-array-the = { $whole_to_top } whole { $courses } above the array; the last one is whole.

# $whole_to_top (text)
# $courses (text)
# $small (text)
coursing-whole-above-the-array-is = { $whole_to_top } whole { $courses } above the array; { $small } is left above them below the top.

coursing-up = up
coursing-down = down
coursing-the-rules-are-against-it = ; the rules are against it

# $course (text)
# $small (text)
# $way (text)
# $small2 (text)
# $whole_to_top (text)
# $courses (text)
# $clear (text)
coursing-course-line-of-a-cut = Course line { $course }, { $small } { $way }: { $small2 } of a cut course at the head, { $whole_to_top } whole { $courses } above{ $clear }

coursing-whole-course = whole course
coursing-whole-courses = whole courses

# $least (text)
# $courses (text)
coursing-no-course-line-leaves-above = No course line leaves { $least } { $courses } above this block, as the rule book asks.

coursing-as-even-as-a-tape = as even as a tape reads

# $small (text)
coursing-off-at-most = { $small } off at most

# $small (text)
# $below (text)
# $small2 (text)
# $above (text)
# $off (text)
coursing-below-the-rail-cut-at = { $small }: { $below } below the rail, { $small2 } cut at the head and { $above } whole above, { $off }

coursing-head-flashing-ends-on-a = head flashing ends on a course line

# $on (text)
coursing-base-rail = base rail { $on }

# $left (text)
coursing-head-flashing-ends-here-of = head flashing ends here: { $left } of a cut course above it

# $whole (text)
# $courses (text)
# $left (text)
coursing-whole-and = { $whole } whole { $courses } and { $left }

# $whole (text)
# $courses (text)
coursing-whole = { $whole } whole { $courses }

# $from (text)
# $to (text)
coursing-heights-from-to-m-give = heights from { $from } to { $to } m: give finite heights, the upper one above the lower one

# $value (text)
coursing-an-exposure-of-m-give = an exposure of { $value } m: give one from 0.001 m, and not less than a 100000th of the face

# $value (text)
coursing-a-miss-of-up-to = a miss of up to { $value } m: give one from 0 to less than half of the least exposure

# $from (text)
# $to (text)
coursing-exposures-from-to-m-give = exposures from { $from } to { $to } m: give the least first, above 0.001 m

coursing-the-last-course-is-whole = the last course is whole

# $small (text)
coursing-are-left-below-the-top = { $small } are left below the top

# $face_heading (text)
# $long (text)
# $small (text)
# $lines (text)
# $small2 (text)
# $left_at_top (text)
coursing-up-the-slope-the-first =
    {""}
    { $face_heading }: { $long } up the slope; the first course line { $small } up, { $lines } lines { $small2 } apart; { $left_at_top }

# $small (text)
# $small2 (text)
coursing-the-head-flashing-shows-and = {"    "}the head flashing shows { $small } and goes on { $small2 } under the shingles

# $course (text)
coursing-on-course-line-2 = on course line { $course }

# $small (text)
# $course (text)
coursing-above-course-line-2 = { $small } above course line { $course }

# $small (text)
coursing-and-over = {" "}and { $small } over

# $block (text)
# $from_eave (text)
# $rail (text)
# $cut (text)
# $whole (text)
# $left_at_top (text)
coursing-block-base-rail-line-up = {"  "}block { $block }: base rail line { $from_eave } up from the eave, { $rail }; { $cut }, then { $whole } to the top{ $left_at_top }

# $small (text)
# $small2 (text)
coursing-no-exposure-from-to-brings = {"    "}no exposure from { $small } to { $small2 } brings a course line to the rail and to the top

# $small (text)
# $small2 (text)
# $whole_words (text)
# $cut_words (text)
# $whole_words2 (text)
coursing-an-exposure-of-brings-a = {"    "}an exposure of { $small } brings a course line to the rail and to the top, to { $small2 }: { $whole_words } from the first line to the rail; { $cut_words }, then { $whole_words2 } above

# $course (text)
# $from_eave (text)
# $cut_words (text)
# $whole_words (text)
# $clear (text)
coursing-base-rail-at-course-line = {"    "}base rail at course line { $course }, { $from_eave } up from the eave: { $cut_words }, then { $whole_words } to the top{ $clear }

# $count (number)
coursing-whole-courses-2 =
    { $count ->
        [one] { $count } whole course
       *[other] { $count } whole courses
    }

coursing-no-cut-course-the-head = no cut course, the head flashing ends on a course line

# $from_metres (text)
coursing-of-a-cut-course-above = { $from_metres } of a cut course above the head flashing

## Files, in the window

files-open-a-job = Open a job
files-save-the-job-as = Save the job as
files-write-the-order-to = Write the order to
files-write-the-sheet-to = Write the sheet to
files-write-the-plan-to = Write the plan to
files-import-a-building-from-a = Import a building from a file or folder
files-import-a-building-from-a-folder = Import a building from a folder
files-load-a-kit = Load a kit
files-load-a-rule-book = Load a rule book
files-save-the-rule-book-as = Save the rule book as
files-compare-with-a-rule-book = Compare with a rule book
files-load-a-price-list = Load a price list
files-load-a-warehouse-list = Load a warehouse list
files-load-a-pallet-list-with = Load a pallet list with counts
files-compare-with-the-order-of = Compare with the order of a job
files-add-the-price-list-of = Add the price list of a supplier
files-lay-a-picture-under-the = Lay a picture under the plan
files-save-the-picture-as = Save the picture as
files-write-the-steps-to = Write the steps to
files-open = Open
files-write = Write
files-list = List
files-load = Load
files-chalkcourse-job = Chalkcourse job
files-sheet-to-print = Sheet to print
files-buildings = Buildings
files-warehouse-list = Warehouse list
files-picture-png-or-jpeg = Picture (PNG or JPEG)
files-png-picture = PNG picture
files-edits = Edits
files-not-saved = {"  "}(not saved)

# $name (text)
files-save-the-changes-to = Save the changes to “{ $name }”?

# $error (text)
files-the-job-that-is-open =
    { $error }

    The job that is open was not touched.

# $path (text)
files-saved-to = Saved to { $path }

# $path (text)
files-order-written-to = Written to { $path }

# $trim_end_matches (text)
files-done-undo-takes-it-back = { $trim_end_matches }: done. Undo takes it back.

# $error (text)
files-no-recovery-copies-are-kept = No recovery copies are kept: { $error }

# $path (text)
# $error (text)
files-frames-are-not-timed-cant = Frames are not timed: { $path } can't be written ({ $error })

files-kept = kept

# $moment (text)
files-kept-on = kept on { $moment }

files-a-job-whose-copy-cant = A job whose copy can't be read

# $name (text)
# $written (text)
# $from (text)
files-from = { $name }, { $written }; from { $from }

# $name (text)
# $written (text)
files-never-saved-to-a-file = { $name }, { $written }; never saved to a file

## Folders and files, chosen in the window

browse-places = Places
browse-up = Up
browse-up-help = To the folder that this one lies in (Alt+Up)
browse-home = Home
browse-job-folder = Folder of a job that was open lately
browse-filter = Only names with
browse-all-kinds = All kinds of files
browse-all-kinds-help = Also files that don't end as such a file does
browse-new-folder = New folder
browse-name-of-folder = Name of the new folder
browse-make = Make it
browse-name = Name
browse-size = Size
browse-changed = Changed

# $folder (text)
browse-list-of = Folders and files in { $folder }

# $name (text)
browse-folder-named = Folder { $name }
browse-empty = Nothing of this kind lies here.

# $typed (text)
browse-no-match = No name here has “{ $typed }” in it.

# $why (text)
browse-cant-read = This folder can't be read: { $why }

# $why (text)
browse-cant-make = The folder could not be made: { $why }

# $folder (text)
browse-no-folder = There is no folder { $folder }.

# $file (text)
browse-no-file = There is no file { $file }.
browse-bad-name = A name of a folder can't be empty or have a slash in it.
browse-use-folder = Use this folder
browse-keys = Up and Down choose, Enter opens, Backspace goes up. In the path, Tab completes the name.

## Filling faces

# $apart (text)
fill-blocks-m-apart-give-0 = blocks { $apart } m apart: give 0 or more

fill-stopped-before-the-end = stopped before the end
fill-ran-to-its-end = ran to its end
fill-every-parting-by-straight-cuts = every parting by straight cuts
fill-partings-by-straight-cuts-the = partings by straight cuts, the bound from fewer blocks

# $sizes (text)
# $apart (text)
# $most (text)
# $end (text)
fill-sizes-of-blocks-each-at = { $sizes } sizes of blocks, each at every position, blocks { $apart } m apart; { $most }; { $end }

fill-smallest-cut-over-values-and = smallest cut over values and exposed sides, corners free of cost: exact
fill-sweep-over-every-choice-of = sweep over every choice of these cells, corners counted: exact
fill-smallest-cut-without-corners-as = smallest cut without corners as the bound, improved cell by cell with them: the difference is open

# $number (text)
# $cells (text)
fill-tiles-were-asked-for-and = { $number } tiles were asked for and { $cells } places are there: ask for fewer, or fit again with other rules

# $rows (text)
# $number (text)
fill-no-rows-hold-tiles = no choice of { $rows } rows holds { $number } tiles

# $rows (text)
# $number (text)
# $method (text)
fill-rows-next-to-each-other = { $rows } rows next to each other, no fewer hold { $number }; among those, { $method }

fill-foot = foot
fill-head = head
fill-outer-corner = outer corner
fill-inner-corner = inner corner

# $name (text)
# $cost (text)
fill-the-cost-of-a-is = the cost of a { $name } is { $cost }: give 0 or more

# $columns (text)
# $rows (text)
fill-a-grid-of-x-places = a grid of { $columns } x { $rows } places is too large

# $cell (text)
# $i (text)
fill-the-value-of-cell-is = the value { $cell } of cell { $i } is not a number to work with

# $column (text)
# $row (text)
fill-two-cells-in-column-row = two cells in column { $column }, row { $row }

fill-sweep-over-every-choice-of-this = sweep over every choice of this many of these cells: exact
fill-cuts-with-a-reward-for = cuts with a reward for each tile as the bound, brought to the number cell by cell: the difference is open
fill-each-row-slid-by-itself = each row slid by itself to every position
fill-one-grid-at-every-offset = one grid at every offset along the row
fill-half-lapped-rows-at-every = half-lapped rows at every offset along the row
fill-base-anywhere = base anywhere

# $exposure (text)
# $first (text)
# $play (text)
# $play2 (text)
fill-base-by-courses-of-m = base by courses of { $exposure } m from { $first } m, play { $play } to { $play2 } m

fill-every-upper-tile-carried = , every upper tile carried
fill-stopped-before-the-end-2 = ; stopped before the end

# $size (text)
# $size2 (text)
# $pitch (text)
# $joints (text)
# $base (text)
# $hooked (text)
# $cells (text)
# $ruled_out (text)
# $end (text)
fill-tiles-x-m-as-laid = tiles { $size } x { $size2 } m as laid, rows level and { $pitch } m apart, { $joints }, { $base }{ $hooked }; { $cells } cells of offsets looked into, { $ruled_out } ruled out by a bound{ $end }

# $width (text)
# $height (text)
# $gap_u (text)
# $gap_v (text)
fill-a-tile-of-x-m = a tile of { $width } x { $height } m with joints of { $gap_u } and { $gap_v } m cannot be laid: sizes must be above 0, joints not below

# $value (text)
fill-a-tolerance-of-m-will = a tolerance of { $value } m does not work: give one above 0 and below a hundredth of the tile, such as 1e-9

# $value (text)
fill-the-lowest-row-carries-something = the lowest row carries something that reaches { $value } m below it: give 0 or more

# $corner (text)
# $shape (phrase)
fill-corner-of-is-no-finite = corner { $corner } of { $shape } is not a finite place: draw it again

# $exposure (text)
# $from (text)
# $to (text)
fill-courses-of-m-with-a = courses of { $exposure } m with a play from { $from } to { $to } m: the exposure must be above 0.001 m and the play run upwards, within 100 courses

# $value (text)
fill-this-face-could-hold-tiles = this face could hold { $value } tiles, more than 1000000: check the units of the tile and of the face

# $id (text)
fill-blocked-shape = blocked shape { $id }

fill-and-in-their-columns = {" "}and in their columns
fill-and-free-to-slide = {" "}and free to slide
fill-too-many-ends-for-the = ; too many ends for the best of each, so a lesser move may win

# $farthest (text)
# $axis (text)
# $pitch (text)
# $rows (text)
# $is_some (text)
# $exact (text)
fill-every-move-of-up-to = every move of up to { $farthest } m along { $axis }, rows { $pitch } m apart kept on their lines{ $rows }{ $is_some }{ $exact }

fill-corner-at-the-foot = corner at the foot
fill-corner-at-the-head = corner at the head

# $value (text)
fill-a-tile-is-worth-give = a tile is worth { $value }: give a number

# $sentence (text)
# $ways (text)
# $modules (text)
fill-moved-would-win = { $sentence } moved { $ways } would win { $modules }.

fill-costs = costs
fill-seems-to-cost = seems to cost

# $what (text)
# $small (text)
fill-by = { $what }, by { $small }

# $join (text)
fill-one-more-module-is-stopped = one more module is stopped by { $join }.

fill-aligned = aligned
fill-half-lapped-rows-in-one = half-lapped rows in one block
fill-rows-in-one-block = rows in one block
fill-block = block
fill-blocks = blocks

# $most (text)
# $most2 (text)
# $base_words (text)
fill-at-most-whole = at most { $most } whole { $most2 }, { $base_words }

fill-base-rail-anywhere = base rail anywhere
fill-base-rail-on-a-course = base rail on a course line

# $small (text)
fill-base-rail-above-a-course = base rail { $small } above a course line

# $small (text)
# $small2 (text)
fill-base-rail-to-above-a = base rail { $small } to { $small2 } above a course line

fill-proved = proved
fill-not-proved = not proved

# $modules (text)
# $bound (text)
fill-of-at-most = { $modules } of at most { $bound }

# $modules (text)
# $bound (text)
fill-none-can-hold-more-than = { $modules }, none can hold more than { $bound }

# $small (text)
fill-reveal = , reveal { $small }

# $base (text)
# $apart (text)
fill-whatever-the-blocks-rows-and = , whatever the blocks, rows and pathways{ $base }{ $apart }

fill-whatever-is-laid-here-two = ; whatever is laid here, two pathways on two planes can't be met: counted without them

# $apart (text)
fill-blocks-apart-as-the-kit = , blocks { $apart } apart as the kit asks

# $money (text)
fill-and-no-layout-of-any = , and no layout of any kind is worth more than { $money }

# $money (text)
# $money2 (text)
# $all (text)
fill-worth-of-at-most = , worth { $money } of at most { $money2 }{ $all }

# $money (text)
# $money2 (text)
fill-flashing-around-them-of-at = , flashing around them { $money } of at least { $money2 }

# $length (text)
# $length2 (text)
fill-around-them-of-at-least = , { $length } around them of at least { $length2 }

# $face (text)
# $pitch (text)
# $least (text)
fill-face-is-the-kit-asks = face { $face } is { $pitch }; the kit asks { $least } or more, so no module may stand on it

# $kit (text)
# $joints (text)
fill-the-kit-does-not-allow = the kit “{ $kit }” does not allow rows with { $joints } joints: choose another way of laying

# $kit (text)
# $way (text)
fill-the-kit-does-not-let = the kit “{ $kit }” does not let modules lie { $way }: choose the other way, or leave it to the kit

# $value (text)
fill-the-price-list-has-no = the price list has no price for { $value }: what flashing costs can't be weighed without it

# $asked (number)
# $found (text)
# $most (text)
fill-modules-were-asked-for-were = { $asked ->
        [one] { $asked } module was asked for
       *[other] { $asked } modules were asked for
    }; { $found } were laid, and no layout of these faces holds more than { $most }

# $asked (number)
# $found (text)
# $most (text)
fill-modules-were-asked-for-were-laid = { $asked ->
        [one] { $asked } module was asked for
       *[other] { $asked } modules were asked for
    }; { $found } were laid. No layout of these faces holds more than { $most }: whether one holds { $asked } is not known

# $asked (number)
# $locked (text)
fill-modules-were-asked-for-and = { $asked ->
        [one] { $asked } module was asked for
       *[other] { $asked } modules were asked for
    }, and locked blocks hold { $locked } already: unlock some or ask for more

# $value (text)
fill-stopped-before-a-layout-of = stopped before a layout of { $value } modules was found: give it more time

# $number (text)
# $most (text)
fill-an-array-of-modules-was = an array of { $number } modules was asked for: give a size from 1 to { $most } modules

# $number (text)
# $stays (text)
fill-on-all-faces-taken-from = { $number }{ $stays } on all faces, taken from the fullest layout found

# $base_words (text)
fill-one-grid = one grid, { $base_words }

fill-flashing-by-the-metre-and = ; flashing by the meter and by the corner, before whole packages

# $sets (text)
# $ruled_out (text)
# $way (text)
# $finished (text)
fill-one-grid-on-each-face = one grid on each face at every offset, every upper module carried by the one below it, from one base line; every share between the faces; on this face { $sets } different sets of places, { $ruled_out } ranges of offsets ruled out by a bound{ $way }{ $finished }

fill-most-compact = most compact
fill-cheapest = cheapest

# $how (text)
# $number (text)
# $stays (text)
# $way (text)
fill-the-on-all-faces = the { $how } { $number }{ $stays } on all faces, { $way }

# $locked (text)
fill-beside-locked = {" "}beside { $locked } locked

# $searched (text)
fill-searched = {"  "}searched: { $searched }

# $count (number)
fill-rows =
    { $count ->
        [one] { $count } row
       *[other] { $count } rows
    }

# $block (text)
# $rows (text)
# $from_metres (text)
# $from_metres2 (text)
fill-block-base-rail-up-from = {"  "}block { $block }: { $rows }, base rail { $from_metres } up from the face's datum, left end { $from_metres2 } along it

# $row (text)
# $modules (text)
# $shown (text)
fill-row-from = {"    "}row { $row }: { $modules }, from { $shown }

fill-nothing-but-the-size-of =
    {"  "}nothing but the size of the face holds it back
    {""}

fill-place = place
fill-places = places

# $places (text)
# $places2 (text)
# $words (text)
fill-at = {"  "}At { $places } { $places2 }: { $words }

# $count (number)
fill-findings =
    { $count ->
        [one] { $count } finding
       *[other] { $count } findings
    }

# $modules (text)
# $kilowatts (text)
# $findings (text)
# $caution (text)
fill-kw =
    {""}
    { $modules }, { $kilowatts } kW; { $findings }

    { $caution }

fill-one-block = one block
fill-several-blocks = several blocks
fill-other-faces-as-they-are = ; other faces as they are

# $laid (text)
# $others (text)
fill-rows-that-slide-in-one = rows that slide in one block, several blocks whose rows hook as far as the book asks, up to three rectangles; pathways by what check says, beside each way that may be left free; the fullest is { $laid }; the bound is over all layouts that check passes: sets of places of which a layout takes one at most{ $others }

fill-one-block-so-far = one block of rows that slide, so far: several blocks are still to be tried; the bound is by straight lines across the face

# $module (text)
fill-a-module-is-worth-give = a module is worth { $module }: give 0 or more

# $value (text)
# $base_words (text)
fill-one-grid-by-worth-a = one grid by worth, a module { $value }, { $base_words }

# $sets (text)
# $ruled_out (text)
# $finished (text)
fill-one-grid-at-every-offset-every = one grid at every offset, every upper module carried by the one below it, from one base line; { $sets } different sets of places, the best choice from each; { $ruled_out } ranges of offsets ruled out by a bound; flashing by the meter and by the corner, before whole packages{ $finished }

## The reveal and what closes a run

fitup-fit-up-of-a-deck = Fit-up of a deck
fitup-type-what-the-tape-reads = Type what the tape reads on the deck; what is drawn stands there until then. It is kept with the job. Planning figures: snap from a straight control line, and check on the roof.
fitup-measured-on-the-deck = Measured on the deck
fitup-width-at-the-eave = Width at the eave
fitup-width-at-the-head = Width at the head
fitup-left-rake = Left rake
fitup-right-rake = Right rake
fitup-rising-diagonal = Rising diagonal
fitup-falling-diagonal = Falling diagonal
fitup-from-the-left-end-of = From the left end of the eave up to the right end of the head.
fitup-from-the-right-end-of = From the right end of the eave up to the left end of the head.
fitup-from-corner-to-corner-on = From corner to corner, on the deck.
fitup-head = head
fitup-left = left
fitup-right = right
fitup-bows-at-the-middle-of = How far each edge bends at its middle
fitup-bow-of-the-eave = Bend of the eave
fitup-bow-of-the-head = Bend of the head
fitup-bow-of-the-left-rake = Bend, left rake
fitup-bow-of-the-right-rake = Bend, right rake
fitup-from-the-string-between-the = From the string between the corners to the edge: into the deck is more than 0, out of it (type −) less.
fitup-as-drawn = As drawn
fitup-forget-what-was-measured-and = Forget what was measured and begin with the face as drawn; undo takes it back.
fitup-this-face-has-not-four = This face does not have four corners: type the widths, rakes and diagonals of the part that carries the array.
fitup-still-to-measure-both-widths = Still to measure: both widths, both rakes and both diagonals.
fitup-out-of-square = Out of square
fitup-base-line = Base line
fitup-up-from-the-eave = Up from the eave
fitup-where-the-base-rail-line = Where the base rail line is, at its lower end. As the block lies now until you type one.
fitup-level-with = Level with
fitup-the-row = The row
fitup-a-module-varies-by = A module varies by
fitup-how-much-one-may-be = How much one may be larger or smaller than its sheet says. 1/32" is half of the sixteenth that a tape is read to.
fitup-a-reveal-is-set-to = A reveal is set to
fitup-how-far-one-reveal-can = How far off one reveal can be set, either way.
fitup-set-this-reveal = Set this reveal
fitup-give-the-block-this-reveal = Give the block this reveal; undo takes it back.
fitup-copy-as-text = Copy as text
fitup-the-fit-up-is-on = The fit-up is on the clipboard.
fitup-the-eave = the eave
fitup-the-head = the head
fitup-halfway-between = halfway between

# $face (text)
fitup-measure-the-deck-of = measure the deck of { $face }

# $block (text)
fitup-set-the-reveal-of = set the reveal of { $block }

# $name (text)
fitup-the-rake-is-square-to = The { $name } rake is square to the eave.

fitup-right-2 = right
fitup-left-2 = left

# $name (text)
# $small (text)
# $way (text)
fitup-the-rake-leans-to-the = The { $name } rake leans { $small } to the { $way } at the head.

fitup-head-and-eave-are-parallel = Head and eave are parallel.

# $small (text)
# $end (text)
fitup-the-head-is-farther-from = The head is { $small } farther from the eave at the { $end } end.

# $from_metres (text)
fitup-square-with-this-eave-and = Square, with this eave and left rake, both diagonals would read { $from_metres }.

# $small (text)
# $small2 (text)
fitup-the-measures-disagree-by-spread = The measures disagree by { $small }; spread over the six, none was changed by more than { $small2 }.

# $at_left (text)
# $at_right (text)
# $at_middle (text)
fitup-snap-it-up-at-the = Snap it { $at_left } up at the left rake, { $at_right } at the right; at the middle that is { $at_middle } from the edge itself.

# $small (text)
# $small2 (text)
fitup-kept-free-at-the-left = { $small } kept free at the left and { $small2 } at the right.

# $times (text)
fitup-solid-as-measured-what-is = Solid: as measured, what is out of square drawn { $times } times. Dashed: square.

fitup-solid-as-measured-dashed-square = Solid: as measured. Dashed: square.

# $name (text)
# $value (text)
# $must (text)
fitup-of-m-measure-it-again = { $name } of { $value } m: measure it again, it must be { $must }

# $rake (text)
# $diagonal (text)
# $a (text)
# $b (text)
# $c (text)
fitup-the-eave-and-make-no = the eave, { $rake } and { $diagonal } make no triangle ({ $a }, { $b } and { $c } m): one of them is misread

fitup-the-left-rake = the left rake
fitup-the-right-rake = the right rake
fitup-the-rising-diagonal = the rising diagonal
fitup-the-falling-diagonal = the falling diagonal
fitup-above-0-and-below-100 = above 0 and below 100 km
fitup-the-bow-of-the-eave = the bend of the eave
fitup-the-bow-of-the-head = the bend of the head
fitup-the-bow-of-the-left = the bend of the left rake
fitup-the-bow-of-the-right = the bend of the right rake
fitup-short-of-a-quarter-of = short of a quarter of the shortest side
fitup-the-module = the module
fitup-the-variation-of-modules = the variation of modules
fitup-the-variation-of-reveals = the variation of reveals
fitup-the-least-reveal = the least reveal
fitup-the-reveal = the reveal
fitup-the-opening = the opening
fitup-a-length-ranges-from-less = a length, ranges from less to more
fitup-a-row = a row
fitup-at-least-one-module-long = at least one module long

# $row (text)
# $modules (text)
# $open (text)
fitup-row-to-fill = Row { $row }, { $modules }: { $open } to fill

# $small (text)
# $long (text)
fitup-it-fits-with-its-reveal = it fits with its reveal of { $small }, { $long } is over at the sides

# $small (text)
# $small2 (text)
# $small3 (text)
fitup-with-its-reveal-of-it = with its reveal of { $small } it is { $small2 } too long; it fits with { $small3 }

# $small (text)
# $long (text)
fitup-it-does-not-close-even = it does not fit: even with the least reveal of { $small } it is { $long } too long; take a module out of this row or move what stops it

fitup-it-closes = the row fits
fitup-it-does-not-close = the row does not fit

# $small (text)
# $yes (text)
# $small2 (text)
# $yes2 (text)
fitup-sizes-and-reveals-can-add = Sizes and reveals can add up to { $small } either way at worst: { $yes }; { $small2 } as the root of the sum of squares: { $yes2 }.

# $small (text)
fitup-the-reveal-stays-at = The reveal stays at { $small }.

# $small (text)
# $small2 (text)
fitup-set-the-reveal-of-the = Set the reveal of the block to { $small } instead of { $small2 }, with which a row is too long.

fitup-deck-the-measures-agree =
    Deck: the measures agree
    {""}

# $small (text)
# $small2 (text)
fitup-deck-the-measures-disagree-by = Deck: the measures disagree by { $small }; spread over all six, none changes by more than { $small2 }

# $end (text)
fitup-the-end-of-the-head = {"  "}the { $end } end of the head is square to the eave

# $end (text)
# $small (text)
# $way (text)
fitup-the-end-of-the-head-stands = {"  "}the { $end } end of the head stands { $small } to the { $way } of square to the eave

fitup-head-and-eave-are-parallel-2 =
    {"  "}head and eave are parallel
    {""}

# $small (text)
# $end (text)
fitup-the-head-is-farther-from-the = {"  "}the head is { $small } farther from the eave at its { $end } end

fitup-parallel-to-the-eave = parallel to the eave
fitup-parallel-to-the-head = parallel to the head
fitup-halfway-between-eave-and-head = halfway between eave and head

# $along (text)
# $long (text)
# $long2 (text)
# $long3 (text)
fitup-base-line-snap-it-from = Base line, { $along }: snap it from { $long } up at the left to { $long2 } up at the right, both from the string along the eave; { $long3 } from the edge at its middle

# $row_words (text)
# $long (text)
# $long2 (text)
# $row_errors (text)
fitup-it-may-reach-from-to =
    { $row_words } It may reach from { $long } to { $long2 } from the left end of the eave.
    {"  "}{ $row_errors }

# $caution (text)
fitup-measure-each-line-from-one =
    Measure every line from the same datum, and check the first module of a row before the next.

    { $caution }

## What can be done about a finding

# $words (text)
fixes-no-single-step-keeps-as = no single step keeps as many modules: { $words }

# $words (text)
fixes-no-single-step-clears-it = no single step clears it: { $words }

fixes-none-was-found-among-moves = none was found among moves, rows, modules and pathways
fixes-then = , then{" "}

# $first (text)
# $then (text)
fixes-first-then = first { $first }, then { $then }

# $block (text)
# $ways (text)
fixes-move-2 = move { $block } { $ways }

# $penetration (text)
# $ways (text)
fixes-move-3 = move { $penetration } { $ways }

# $block (text)
fixes-take-away = take { $block } away

# $modules (text)
# $row (text)
# $block (phrase)
fixes-switch-on-in-row-of = switch on { $modules } in row { $row } of { $block }

# $row (text)
# $block (phrase)
fixes-shift-row-of-over-the = shift row { $row } of { $block } over the row below

# $row (text)
# $name (phrase)
# $ways (text)
fixes-shift-row-of-and-those = shift row { $row } of { $name } and those above it { $ways }

# $row (text)
# $name (phrase)
# $ways (text)
fixes-shift-row-of = shift row { $row } of { $name } { $ways }

# $block (phrase)
# $length (text)
fixes-set-the-reveal-of-to = set the reveal of { $block } to { $length }

fixes-take-the-repeated-corner-away = take the repeated corner away

# $ring (text)
fixes-take-hole-away = take hole { $ring } away

# $face (text)
fixes-take-back-what-was-said = take back what was said of sides that { $face } no longer has

fixes-put-drip-edge-on-with = put drip edge on with this job
fixes-take-the-waiver-away = take the waiver away
fixes-raise = raise
fixes-lower = lower
fixes-up-the-slope = up the slope
fixes-down-the-slope = down the slope

# $to (text)
fixes-to-the = to the { $to }

fixes-up-the-plan = up the plan
fixes-down-the-plan = down the plan

# $row (text)
# $column (text)
fixes-row-place = row { $row } place { $column }

# $modules (text)
# $blocks (phrase)
fixes-switch-off-of = switch off { $modules } of { $blocks }

## Files of other programs

formats-latitude-longitude = Latitude, longitude
formats-of-the-plans-origin-in = Of the plan's origin, in degrees of WGS 84, as maps give them: 39.1, -84.5. Needed to write the plan as GeoJSON.
formats-latitude-from-85-to-85 = Latitude from -85 to 85, a comma, then longitude from -180 to 180, in degrees: 39.1, -84.5.
formats-import-a-building = Import a building…
formats-import-from-a-folder = Import from a folder…
formats-reading-the-buildings = Reading the buildings…
formats-reading-broke-off-try-again = Reading stopped partway: try again, or cut the file down to the area of one street.
formats-name-or-number = name or number
formats-take-this-building = Take this building
formats-into-this-job-where-it = Into this job if it has no roof yet, and undo takes it back; otherwise into a new job with the same kit and rule book.
formats-choose-a-building-what-is = Choose a building: what there is to know about it shows here.
formats-every-roof-surface-of-it = Each of its roof surfaces becomes a face.
formats-outline-of-the-walls-alone = Outline of the walls alone: the roof is raised over it as said here.
formats-plan-as-geojson = Plan as GeoJSON…
formats-house-as-gltf = House as glTF…
formats-the-plan-could-not-be = The plan could not be written
formats-roof-report = Roof report
formats-put-the-report-on-the = Put the report on the clipboard as text
formats-the-roof-report-is-on = The roof report is on the clipboard.
formats-squares-of-100-ft-no = Squares of 100 ft², no waste
formats-faces = Faces
formats-edges-true-length = Edges, true length
formats-press-to-list-each-line = Press to list each line of this kind
formats-heights-are-above-the-level = Heights are above the level from which the job measures them.

# $area (text)
formats-footprint = footprint  ·  { $area }

# $area (text)
formats-face-in-plan = 1 face  ·  { $area } in plan

# $faces (number)
# $area (text)
formats-faces-in-plan = { $faces ->
        [one] { $faces } face
       *[other] { $faces } faces
    }  ·  { $area } in plan

# $left_out (text)
formats-left-out = {"  "}·  { $left_out } left out

formats-look-at-it = {"  "}·  look at it

# $entry (text)
# $gives (text)
formats-building = Building { $entry }: { $gives }

# $all (number)
formats-buildings = { $all ->
        [one] { $all } building
       *[other] { $all } buildings
    }

# $found (text)
# $all (text)
formats-of = { $found } of { $all }

# $trouble (text)
formats-not-read = Not read: { $trouble }

# $house (text)
formats-import = Import { $house }

# $count (number)
formats-things-to-look-at-were =
    { $count ->
        [one] {" "}One thing to look at is in the list.
       *[other] {" "}{ $count } things to look at are in the list.
    }

# $house (text)
# $more (text)
formats-was-imported-it-is-not = { $house } was imported. It is not saved yet.{ $more }

# $path (text)
formats-written-to = Written to { $path }

# $pitch (text)
# $degrees (text)
# $falls (text)
formats-falls = { $pitch } ({ $degrees }°), falls { $falls }

# $number (text)
# $from (text)
formats-level-at = {"    "}{ $number }, level at { $from }

# $number (text)
# $from (text)
# $to (text)
formats-up-to = {"    "}{ $number }, { $from } up to { $to }

# $count (number)
formats-the-roof-does-not-hold =
    { $count ->
        [one] The roof does not hold together in one place: see the findings.
       *[other] The roof does not hold together in { $count } places: see the findings.
    }

formats-it-has-no-roof-surface = It has no roof surface.

# $raw (text)
# $most_surfaces (text)
formats-it-has-roof-surfaces-a = It has { $raw } roof surfaces; a building has at most { $most_surfaces }: none was taken.

formats-it-is-a-template-which = it is a template; templates are not read
formats-it-has-no-surfaces = it has no surfaces
formats-it-does-not-say-which = it does not say which surfaces are roof
formats-its-boundaries-are-not-as = its boundaries are not as deep as its type says
formats-it-does-not-say-of = it does not say what each surface is
formats-no-surface-of-it-is = none of its surfaces is marked as roof

# $lod (text)
# $why (text)
formats-of-its-geometry-of-lod = of its geometry of LoD { $lod }, { $why }

# $nth (text)
# $line (text)
# $column (text)
# $wrong (text)
formats-text-in-it-line-column = text { $nth } in it, line { $line }, column { $column }: { $wrong }

# $nth (text)
# $found (text)
formats-text-in-it-is-of = text { $nth } in it is of type { $found }; a city model is CityJSON, followed in a sequence by CityJSONFeature

# $value (text)
formats-it-is-cityjson-versions-1 = it is CityJSON { $value }; versions 1.1 and 2.0 are read: upgrade it first

formats-it-has-no-usable-transform = it has no usable "transform": CityJSON 1.1 and 2.0 have a scale and a translation of three numbers each
formats-of-no-version = of no version

# $most_objects (text)
formats-more-than-city-objects-cut = more than { $most_objects } city objects: cut the area of one street out of it first

# $path (text)
# $error (text)
formats-check-that-the-path-is = { $path }: { $error }; check that the path is right and that you may read it

# $path (text)
# $what (text)
# $most (text)
formats-is-larger-than-mb-cut = { $path }: { $what } is larger than { $most } MB; cut the area of one street out of it first

# $path (text)
# $id (text)
formats-there-is-no-building-list = { $path }: there is no building { $id }; list what is there with --list

# $path (text)
formats-there-is-no-building-in = { $path }: there is no building in it; GeoJSON (.geojson, .json) and CityJSON (.city.json, .city.jsonl, .json, .jsonl) are read

# $name (text)
# $told (text)
formats-no-roof-surface-of-it = { $name }: none of its roof surfaces can be a face. { $told }

# $value (text)
formats-this-is-no-geojson-rfc = this is not GeoJSON (RFC 7946): { $value }

formats-this-geojson-holds-no-polygon = this GeoJSON holds no Polygon or MultiPolygon: a footprint is one of them

# $value (text)
formats-its-crs-is-geojson-is = its "crs" is { $value }; GeoJSON is always in WGS 84 degrees (RFC 7946, section 4): convert it to longitude and latitude

# $name (text)
# $position (text)
# $longitude (text)
# $latitude (text)
formats-position-is-no-longitude-from = { $name }, position { $position }: { $longitude }, { $latitude } is not a longitude from -180 to 180 and a latitude from -85 to 85 in degrees; GeoJSON is always in WGS 84 degrees

# $name (text)
# $metres (text)
# $most (text)
formats-reaches-m-from-its-middle = { $name } reaches { $metres } m from its middle: a house stays within { $most } m

# $name (text)
# $corners (text)
# $most (text)
formats-has-corners-a-house-has = { $name } has { $corners } corners: a house has at most { $most }

# $ring (text)
formats-has-a-corner-at-no = { $ring } has a corner without a position

# $ring (text)
formats-has-fewer-than-three-corners = { $ring } has fewer than three corners; a ring has four positions or more

# $corner (text)
# $ring (phrase)
formats-corner-of-is-on-the = corner { $corner } of { $ring } is at the same spot as the one before it

# $ring (text)
formats-has-no-area = { $ring } has no area

# $at (text)
# $at2 (text)
formats-sides-cross-or-touch-m = sides cross or touch { $at } m east and { $at2 } m north of its middle

# $ring (text)
formats-is-not-inside-the-outline = { $ring } is not inside the outline

# $index (text)
formats-outline = Outline { $index }

formats-geojson-is-longitude-and-latitude = GeoJSON is longitude and latitude, and the job does not say where its plan is: give latitude and longitude of the site
formats-the-plan-lies-over-the = the plan lies over the 180th meridian: GeoJSON wants shapes cut there (RFC 7946, section 3.1.9), which is not done

# $most (text)
formats-the-plan-reaches-beyond-85 = the plan reaches beyond 85° of latitude or farther than { $most } m from its origin

formats-there-is-no-house-to = there is no house to write yet: draw a face first
formats-the-house-is-larger-than = the house is larger than a glTF file can be

# $value (text)
formats-its-coordinates-are-degrees-turn = its coordinates are degrees ({ $value }): turn it into a national grid in meters first

# $value (text)
formats-its-coordinates-stretch-lengths-by = its coordinates ({ $value }) stretch lengths by more than 2 in 1,000: turn it into a national grid in meters first

# $value (text)
formats-its-reference-system-is-not = its reference system { $value } is not known here, so nobody can say how long its lengths are: turn it into a national grid in meters of the EPSG list

# $value (text)
formats-it-names-no-reference-system = it names no reference system, and its largest building is { $value } across: that is degrees, not meters; turn it into a national grid in meters first

formats-the-file-names-no-reference = The file names no reference system: its lengths were taken as meters. Check one against the house.

# $factor (text)
# $factor2 (text)
# $mercator_latitude (text)
formats-the-file-is-in-web = The file is in Web Mercator (EPSG:3857), which stretches lengths: they were brought back to { $factor } of what it says east and { $factor2 } north, for latitude { $mercator_latitude }°.

formats-it-names-a-vertex-that = it names a vertex that is not in the file
formats-it-has-fewer-than-three = it has fewer than three corners

# $value (text)
# $most (text)
formats-it-has-corners-a-face = it has { $value } corners; a face has at most { $most }

formats-it-has-no-area = it has no area

# $value (text)
formats-it-stands-at-as-a = it stands at { $value }°, as a wall does

formats-it-looks-down-the-underside = it looks down: the underside of an overhang

# $value (text)
# $most (text)
formats-a-corner-is-m-out = a corner is { $value } m out of the plane of the others; one face allows at most { $most } m

# $value (text)
formats-it-reaches-m-no-roof = it reaches { $value } m: no roof does

formats-a-corner-of-it-is = one of its corners has no position
formats-a-ring-of-it-has = one of its rings has fewer than three corners
formats-two-corners-of-it-are = two of its corners are at the same spot
formats-a-ring-of-it-has-no = one of its rings has no area in plan

# $at (text)
# $at2 (text)
formats-its-sides-cross-or-touch = its sides cross or touch at { $at }, { $at2 } in plan

formats-a-hole-of-it-is = one of its holes is not inside its outline

# $surface (text)
# $from_metres (text)
formats-roof-surface-is-no-exact = Roof surface { $surface } is not an exact plane: a corner is { $from_metres } off the face made of it.

# $left (text)
# $area_text (text)
# $reason (text)
formats-roof-surface-was-left-out = Roof surface { $left } ({ $area_text }) was left out: { $reason }.

formats-level = level
formats-it-is-neither-a-png = it is neither a PNG nor a JPEG; save it as one of these

# $width (text)
# $height (text)
# $most_pixels (text)
formats-it-is-pixels-more-than = it is { $width } × { $height } pixels, more than the { $most_pixels } million that are read; make a smaller copy

# $value (text)
formats-the-file-is-damaged-save = { $value }; the file is damaged: save the picture again

# $file (text)
# $most_entries (text)
formats-more-than-buildings-the-rest = { $file }: more than { $most_entries } buildings; the rest is not listed. Cut the area of one street out of it first.

formats-there-are-several-buildings-in = there are several buildings in it: list them with --list, and name one with --building
formats-it-is-empty = it is empty
formats-this-file = this file
formats-a-line-of-it = a line of it

## What stands beside fields

help-what-people-call-it-on = What people call it: on the drawing, in findings and on every sheet.
help-where-the-house-stands-as = Where the house stands, as it is printed on sheets.
help-what-the-crew-must-know = What the crew must know before driving there; it is printed on the plan to build from.
help-how-lengths-are-shown-any = How lengths are shown. Any unit can be typed: 12' 6 1/2", 3.82 m.
help-which-side-of-a-module = Which side of a module runs along the eave; the kit says what it allows.
help-the-face-that-the-block = The face that the block lies on; another one takes it there.
help-what-comes-through-the-roof = What comes through the roof: the rule book has a clearance for each kind.
help-round-for-pipes-a-rectangle = Round for pipes, a rectangle for curbs and chimneys, or the outline as drawn.
help-how-rows-lie-to-one = How rows lie to one another when faces are filled; the kit says which joints it allows.
help-whether-the-size-of-the = Whether the size of the array is given in modules or in kilowatts of rated power.
help-of-all-arrays-of-this = Of all arrays of this size: the one with the least flashing around it, or with the cheapest.
help-what-it-is-in-a = What it is, in a word that others understand.
help-which-block-is-spoken-of = Which block this is about.
help-why-the-line-differs-from = Why the line differs from the count; every output shows it.
help-another-part-of-the-price = Another part of the price list that may stand in for this one.
help-what-one-of-it-is = What one of it is called, such as box, roll or piece.
help-under-which-heading-it-stands = The heading that it stands under in the order.
help-the-stage-of-work-that = The stage of work that can't start without it.
help-year-month-day-2026-11 = Year, month, day: 2026-11-26.
help-who-counted-and-can-be = Who counted, and can be asked.
help-what-the-supplier-must-know = What the supplier must know about it.
help-what-the-base-line-runs = What the base line runs level with where eave and head are not parallel.
help-which-face-is-spoken-of = Which face this is about; it is selected on the drawing too.
help-what-shape-the-face-has = What shape the face has: it says which lengths are needed.
help-how-the-pitch-was-found = How the pitch was found: said, or measured with a level and a rule.
help-how-much-of-the-roof = How much of the roof gets new shingles: it sets tear-off, underlayment and shingles.
help-handbooks-give-shingles-10-on = Handbooks give shingles 10 % on a gable, 15 % on a hip roof, more on one with valleys. What the cuts of these faces make is shown beside the line.

## What was done, for undo

# $name (text)
history-move-2 = move { $name }

# $name (text)
history-nudge = nudge { $name }

# $name (text)
history-resize = resize { $name }

# $name (text)
history-shift-a-row-of = shift a row of { $name }

# $name (text)
history-switch-modules-of = switch modules of { $name }

# $name (text)
history-change = change { $name }

# $name (text)
history-place = place { $name }

# $name (text)
history-draw = draw { $name }

# $name (text)
history-delete = delete { $name }

# $name (text)
history-cut = cut { $name }

# $name (text)
history-paste = paste { $name }

# $name (text)
history-duplicate = duplicate { $name }

# $name (text)
history-move-a-corner-of = move a corner of { $name }

# $name (text)
history-add-a-corner-to = add a corner to { $name }

# $name (text)
history-delete-a-corner-of = delete a corner of { $name }

history-rename-the-job = rename the job
history-change-the-site = change the site
history-change-the-units = change the units
history-nothing-to-undo = Nothing to undo

# $label (text)
history-undo = Undo: { $label }

history-nothing-to-redo = Nothing to redo

# $label (text)
history-redo = Redo: { $label }

# $label (text)
history-undone = Undone: { $label }

# $label (text)
history-done-again = Done again: { $label }

history-steps-taken = Steps taken
history-since-the-job-was-opened = Since the job was opened, from first to last. Press one to go there; nothing is lost until you close the job.
history-now = now
history-undone-2 = undone
history-done-otherwise-later = left aside
history-saved = saved

# $words (text)
history-back-at-step = Back at step { $words }

## The job and its edits

job-landscape = landscape
job-portrait = portrait
job-price-list = price list
job-warehouse-list = warehouse list
job-pallet-list = pallet list
job-osb = OSB
job-plywood = plywood
job-boards = boards
job-spaced-boards = spaced boards
job-class-a = class A
job-class-b = class B
job-class-c = class C
job-no-class = no class

# $what (text)
# $number (text)
job-the-job-has-no = the job has no { $what } { $number }

# $what (text)
job-a-position-must-be-a = { $what }: a position must be a number within 100 km of the origin

# $name (text)
# $most (text)
# $rows (text)
# $columns (text)
job-a-block-has-1-to = { $name }: a block has 1 to { $most } places, not { $rows } × { $columns }

# $what (text)
job-must-be-more-than-0 = { $what } must be more than 0 and less than 1 km

# $part (text)
# $error (text)
job-cant-be-raised = { $part } can't be raised: { $error }

# $value (text)
job-the-parts-of-the-house = the parts of the house can't be put together: { $value }

# $name (text)
job-face-follows-from-a-part = face { $name } follows from a part of the house: change that part, or set it free to draw its faces

# $part (text)
# $described (text)
# $drawn (text)
job-part-describes-sides-for-rings = part { $part } describes { $described } sides for rings of { $drawn } corners: describe one side for each corner

# $face (text)
# $numbered (text)
# $drawn (text)
job-face-numbers-sides-for-rings = face { $face } numbers { $numbered } sides for rings of { $drawn } corners: give each side a number of its own, below `next`

# $part (text)
# $side (text)
job-part-has-two-sides-with = part { $part } has two sides with the number { $side }: give each side its own

# $latitude (text)
# $longitude (text)
job-latitude-longitude-degrees-from-85 = latitude { $latitude }, longitude { $longitude }: give degrees from -85 to 85 and from -180 to 180

job-the-picture-under-the-plan = the picture under the plan must lie within 100 km of the origin, be 1 mm to 100 km wide, and show at least part of itself

# $path (text)
# $error (text)
job-picture-missing = { $path }: { $error }; put the picture back there, or choose it again

# $path (text)
# $most (text)
job-picture-too-large = { $path }: this picture is larger than { $most } MB; make a smaller copy
job-a-waiver-needs-a-reason = a waiver needs a reason: write why this may be built so

# $value (text)
# $most_number (text)
job-cant-be-the-number-of = { $value } can't be the number of anything: numbers go up to { $most_number }

# $name (text)
# $most (text)
# $modules (text)
job-a-circuit-has-1-to = { $name }: a circuit has 1 to { $most } modules, not { $modules }

# $name (text)
job-a-module-is-in-one-circuit = { $name }: a module is in one circuit, and there once
job-a-name-is-needed = a circuit and a junction box need a name

# $field (text)
# $celsius (text)
job-is-no-temperature = { $field }: { $celsius } °C is no temperature of this earth

# $field (text)
# $value (text)
# $least (text)
# $most (text)
job-is-out-of-range = { $field }: { $value } must be between { $least } and { $most }
job-a-circuit-is-read-once = a circuit has one reading

# $code (text)
# $most (text)
job-label-text-must-be = label_texts: the code { $code } has 1 to 64 small letters, digits and hyphens, and a text has at most { $most } characters

# $value (text)
job-the-order = the order: { $value }

job-face = face
job-penetration = penetration
job-block = block
job-the-kit = the kit
job-the-rule-book = the rule book
job-the-price-list = the price list

# $face (text)
job-the-courses-of-face = the courses of face { $face }

# $penetration (text)
job-penetration-2 = penetration { $penetration }

# $name (text)
job-junction-box-2 = junction box { $name }

# $index (text)
# $added (text)
job-added-number-is-a-part = added[{ $index }].number: { $added } is a part of the kit: override that line, or take another number

# $block (text)
job-the-reveal-of-block = the reveal of block { $block }

# $field (text)
# $id (text)
job-missing-field-in-face-which = missing field `{ $field }` in face { $id }, which is a drawn one: it does not come from a part of the house

# $path (text)
# $error (text)
# $doing (text)
job-check-that-the-path-is = { $path }: { $error }; check that the path is right and that you may { $doing } it

# $path (text)
# $most_bytes (text)
# $format (text)
job-this-file-is-larger-than = { $path }: this file is larger than { $most_bytes } MB and can't be a { $format } file

# $path (text)
# $line (text)
# $column (text)
# $field (text)
# $wrong (text)
job-line-column-field = { $path }, line { $line }, column { $column }, field { $field }: { $wrong }

# $path (text)
# $found (text)
# $expected (text)
job-this-is-a-file-expected = { $path }: this is a { $found } file; expected the format { $expected }

# $path (text)
# $found (text)
# $known (text)
job-this-file-is-version-of = { $path }: this file is version { $found } of its format; this program reads up to version { $known }. Open it with a newer program: reading it here could lose what the newer one wrote
job-the-clipboard = the clipboard

job-read = read
job-write = write

# $field (text)
# $index (text)
# $id (text)
# $next_id (text)
job-field-data-id-the-number = field data.{ $field }[{ $index }].id: the number { $id } must be below next_id, { $next_id }

# $field (text)
# $index (text)
# $id (text)
job-field-data-id-the-number-is = field data.{ $field }[{ $index }].id: the number { $id } is taken twice

# $field (text)
# $index (text)
# $piece (text)
# $side (text)
# $part (text)
job-field-data-from-piece-of = field data.{ $field }[{ $index }].from: piece { $piece } of side { $side } of part { $part } has a face already

# $index (text)
# $face (text)
job-field-data-blocks-face-the = field data.blocks[{ $index }].face: the job has no face { $face }

# $value (text)
job-is-no-key-of-a = “{ $value }” is not the key of a finding: copy the key from a report, such as “setback/block-3/face-1/side-4/rake”

job-open = open

# $error (text)
job-other-amounts-are-written-as = { $error }; other amounts are written as "200 sq ft", "20 sq m", "1 h", "250 lb"

job-part = part

# $part (text)
job-part-2 = part { $part }

job-main-house = main house
job-ell = ell
job-dormer = dormer
job-porch = porch
job-other-part = other part
job-pipe-boot = pipe boot
job-vent = vent
job-skylight = skylight
job-escape-window = escape window
job-other-penetration = other penetration
job-the-pipe-boot = the pipe boot
job-the-vent = the vent
job-the-chimney = the chimney
job-the-skylight = the skylight
job-the-escape-window = the escape window
job-the-other-penetration = the other penetration

# $block (text)
# $rows (text)
# $columns (text)
# $row (text)
# $place (text)
job-block-has-rows-1-to = block { $block } has rows 1 to { $rows } and places 1 to { $columns }: there is no row { $row }, place { $place }

job-an-outline-of-three-corners = an outline of three corners keeps them all
job-part-3 = part
job-waiver = waiver
job-circuit = circuit
job-junction-box = junction box
job-reading = reading
job-wiring = wires
job-site = site
job-picture-under-the-plan = picture under the plan
job-kit = kit
job-rule-book = rule book
job-order = order
job-added = added
job-changed = changed
job-removed = removed
job-it-says-which-thing-this = it says which thing this is, and that does not change: leave it out

# $spot (text)
# $counts (text)
job-there-is-no-the-rings = there is no { $spot }: the rings have { $counts } corners, counted from 1

# $field (text)
# $wrong (text)
job-field = field { $field }: { $wrong }

# $what (text)
# $asked (text)
# $known (text)
job-the-job-has-no-there = the job has no { $what } { $asked }; there is { $known }

# $what (phrase)
# $asked (text)
# $numbers (text)
job-several-have-the-name-of = more than one { $what } is called { $asked }: say which by its number, one of { $numbers }

# $one (text)
# $other (text)
job-give-or-one-of-the = give { $one } or { $other }, one of the two

# $block (text)
job-the-face-of-block-has = the face of block { $block } is not on the roof at present: bring it back first

job-no-picture-lies-under-the = no picture lies under the plan: lay one with set-underlay first

# $value (text)
job-no-file-is-read-here = { $value }: no file is read here: give the whole with set-…

# $value (text)
job-a-step-is-an-object = a step is an object with one field that names what is done, such as { $value }

# $name (text)
# $known (text)
job-nothing-is-done-by-there = there is no edit { $name }; there are { $known }

# $value (text)
job-say-what-stands-on-its = say what stands on its sides: { $value }, "gable" or "wall"

job-corners-and-sides-count-from = corners and sides count from 1: 3 is the third of the outline, "2.1" the first of the first courtyard

# $number (text)
# $name (text)
# $wrong (text)
job-edit = edit { $number } ({ $name }): { $wrong }

# $number (text)
# $of (text)
# $field (text)
# $wrong (text)
job-edit-of-field = edit { $number } of { $of }, field { $field }: { $wrong }

# $code (text)
# $known (text)
job-field-language-is-none-that = field language: { $code } is not a language of this program: use one of { $known }

job-line = line
job-the-workbook-is-damaged-a = the workbook is damaged: a cell of it can't be read
job-the-workbook-has-no-sheet = the workbook has no sheet
job-there-is-no-header-row = there is no header row

# $name (text)
# $word (text)
# $known (text)
job-the-header-needs-a-column = the header needs a column { $name }; the first { $word } has { $known }

# $place (text)
# $text (text)
# $said (text)
# $at (text)
job-and-in-are-written-in = { $place }: { $text } and { $said } in { $at } are written in two ways; write all with a decimal point, as 1205.00

# $text (text)
job-cant-read-as-a-number = can't read { $text } as a number: write it as 1205.00

# $text (text)
job-can-be-read-in-two = { $text } can be read in two ways, and no other cell says which: write it as 1205.00 or 1.21

# $text (text)
job-cant-read-write-it-with = can't read { $text }: write it with a decimal point, as 184.50 or 1,205.00

## The kit

# $field (text)
kit-must-be-0-or-more = { $field } must be 0 or more and below 1 km

kit-deck-kinds-must-name-at = deck.kinds must name at least one kind of sheathing

# $underlayment (text)
kit-fire-underlayment-there-is-no = fire.underlayment: there is no part { $underlayment } among the parts

# $field (text)
# $value (text)
kit-must-be-more-than-0 = { $field } must be more than 0, not { $value }

kit-module-length-is-the-long = module.length is the long side: it can't be less than module.width
kit-orientations-must-name-at-least = orientations must name at least one of "landscape" and "portrait"
kit-reveal-least-usual-and-most = reveal: least, usual and most must rise from 0 in that order

# $field (text)
kit-must-be-0-or-more-2 = { $field } must be 0 or more

# $field (text)
kit-must-be-0-or-more-and = { $field } must be 0 or more and below 1 m

# $part (text)
kit-module-part-there-is-no = module.part: there is no part { $part } among the parts

# $index (text)
# $part (text)
kit-parts-number-is-taken-twice = parts[{ $index }].number: { $part } is taken twice

# $index (text)
kit-parts-number-a-part-needs = parts[{ $index }].number: a part needs a number

# $index (text)
kit-parts-package-holds-must-be = parts[{ $index }].package.holds must be in what the part is counted in: a number of pieces, a length such as "100 ft", an area such as "200 sq ft", "1 h" or "250 lb"

# $index (text)
# $crew (text)
kit-parts-crew-there-is-no = parts[{ $index }].crew: there is no crew { $crew } among the crews

# $index (text)
# $amount (text)
kit-parts-package-holds-must-be-more = parts[{ $index }].package.holds must be more than 0, and whole where it is pieces, not { $amount }

# $index (text)
# $choice (text)
kit-choices-code-each-choice-needs = choices[{ $index }].code: each choice needs a code of its own, not { $choice }

# $number (text)
kit-of-the-part-must-stand = of: the part { $number } must stand above this one

# $when (text)
kit-when-there-is-no-choice = when: there is no choice { $when } among the choices

kit-each-the-amount-must-be = each: the amount must be 0 or more, and a lap shorter than its piece
kit-each-count-gives-pieces-or = each: "count" gives pieces, or a length of a length, or an area of an area; "length" gives a length for each piece or run; "pieces" and "spaced" give pieces along a run ("spaced" also over an area). This part is counted in something else
kit-solar = Solar
kit-flashing = Flashing
kit-wire-and-grounding = Wire and grounding
kit-tear-off-and-deck = Tear-off and deck
kit-safety-and-consumables = Safety and consumables
kit-disposal = Disposal
kit-permits-and-fees = Permits and fees

# $field (text)
# $number (text)
kit-hold-down-there-is-no = hold_down.{ $field }: there is no part { $number } among the parts

# $part (text)
# $foot (text)
kit-hold-down-part-must-count = hold_down.part: { $part } must count at least one for each { $foot }

# $pounds (text)
kit-hold-down-pounds-must-be = hold_down: pounds must be 1 to 100000, not { $pounds }

# $index (text)
kit-parts-until-must-not-come = parts[{ $index }].until must not come before its stage

# $index (text)
# $part (text)
# $under (text)
kit-parts-laps-lies-over-but = parts[{ $index }].laps: { $part } lies over { $under }, but is laid before it

# $index (text)
# $under (text)
kit-parts-laps-there-is-no = parts[{ $index }].laps: there is no part { $under } among the parts

kit-laying-joints-must-name-at = laying.joints must name at least one of "free", "aligned" and "half-lapped"
kit-laying-base-rail-above-course = laying.base_rail: above_course_from and above_course_to must rise, within a meter of the course line

# $field (text)
# $share (text)
kit-wiring-share = { $field } is a share from 0 to 1, not { $share }

# $field (text)
kit-wiring-terminals = { $field } must be 60 or 75
kit-wiring-vmp = wiring.vmp_percent_per_kelvin must be 0 or less, and not below -5: voltage falls when cells are hot
kit-wiring-string-rises = wiring.device.dc: least_in_string can't be more than most_in_string

# $index (text)
kit-wiring-inverter-rises = wiring.inverters[{ $index }]: least_volts can't be more than most_volts

# $index (text)
# $number (text)
kit-wiring-inverter-twice = wiring.inverters[{ $index }].number: { $number } is taken twice
kit-tear-off = Tear-off
kit-deck = Deck
kit-dry-in = Dry-in
kit-first-courses = First courses
kit-on-the-ground = On the ground
kit-under-the-array = Under the array
kit-base-rail = Base rail
kit-modules = Modules
kit-head-flashing = Head flashing
kit-sides-of-the-array = Sides of the array
kit-around-the-array = Around the array
kit-shingles-to-the-ridge = Shingles to the ridge
kit-wires-into-the-box = Wires into the box
kit-old-roofing-off-anchors-ropes = Old roofing off; anchors, ropes and tarps first.
kit-replace-bad-sheathing-frame-crickets = Replace bad sheathing, frame crickets, pull or drive every proud nail, sweep.
kit-drip-edge-at-the-eaves = Drip edge at the eaves, leak barrier full length, lining of valleys, underlayment, then drip edge at the rakes over it.
kit-starter-at-eaves-and-rakes = Starter at eaves and rakes, shingles up to the line of the base rail; boots, walls, chimneys and skylights are flashed as the courses reach them.
kit-meanwhile-feet-brackets-and-devices = Meanwhile: feet, brackets and devices onto the modules. Two people carry a module.
kit-self-adhered-membrane-in-level = Self-adhered membrane in level strips from below up, then the fire-rated layer with cap nails.
kit-snap-the-line-screw-the = Snap the line, screw the rail to the deck, splice it, cap its ends.
kit-row-by-row-from-the = Row by row from the rail: hook in, swing down, screw every foot to the deck; leads on to the next, home run aside, bare copper through every lug. Modules in light are energized.
kit-supports-at-ends-and-seams = Supports at ends and seams, inserts, the bonding jumper before it closes, head flashing straight and nailed.
kit-a-piece-of-step-flashing = A piece of step flashing with each course up the sides, then the counter flashing snapped on.
kit-corners-interlocked-an-l-piece = Corners interlocked, an L-piece of membrane over each, a strip of membrane, then the peel-and-stick starter.
kit-cut-course-over-the-head = Cut course over the head flashing, whole courses to the ridge, caps; the box is flashed in on the way.
kit-both-ends-of-the-home = Both ends of the home run and the ground into the junction box, left for the electrician.
kit-gable-roof = gable roof
kit-hip-roof = hip roof
kit-cut-up-roof-with-valleys = cut-up roof, with valleys

# $share (text)
kit-waste-is-a-share-from = waste is a share from 0 to 1, not { $share }

## The lesson

lesson-a-first-job-step-by = A first job, step by step
lesson-show-me-step-by-step = Show me, step by step
lesson-skip-this-step = Skip this step
lesson-leave-the-steps = Leave the steps
lesson-all-done = All done

# $number (text)
# $of (text)
lesson-step-of = Step { $number } of { $of }

lesson-raise-a-roof-over-the = Raise a roof over the walls

# $key (text)
# $face (text)
lesson-press-w-click-where-the = Press { $key }. Click where the lower left corner of the walls is, point up to the right, type 48' x 30' and Enter. Gables or hips, pitch and overhang are chosen above the drawing. ({ $face } draws other parts and single faces.)
lesson-say-how-steep-it-is = Say how steep it is
lesson-the-house-is-held-on = The house is selected: on the right, type the pitch of all its slopes, such as 5:12, and Enter. Skip this step if 6:12 is right.
lesson-mark-what-comes-through = Mark what comes through

# $key (text)
lesson-press-p-and-click-where = Press { $key } and click where a vent stands. It keeps modules away, as far as the rule book says.
lesson-fill-it = Fill it

# $key (text)
lesson-press-l-the-most-modules = Press { $key }. The most modules that the rules allow are laid, and the list says what holds them back.
lesson-break-a-rule-and-mend = Break a rule, and mend it

# $key (text)
lesson-drag-the-block-over-the = Drag the block over the vent: what is wrong turns red and is listed. Let go, and press the move that the finding offers, or undo ({ $key }).
lesson-see-the-order = See the order

# $key (text)
lesson-press-o-every-part-with = Press { $key }: every part, with how many and why. Export, at the top right, writes it to print or for a spreadsheet.
lesson-that-is-the-whole-way = That is the whole way

# $home (text)
# $find (text)
# $save (text)
lesson-from-a-bare-roof-to = From a bare roof to an order. { $home } shows it to the homeowner; { $find } finds any command; { $save } saves. Planning aid only: read the cautions before anyone climbs.
lesson-words-of-the-trade = Words of the trade
lesson-find-a-word = Find a word
lesson-no-word-is-like-that = There is no word like that.
lesson-as-roofers-and-installers-use = As roofers and installers use them; common practice, no source. Where a code defines a word, the code counts.
lesson-array = array
lesson-all-modules-of-a-job = All modules of a job together.
lesson-base-rail = base rail
lesson-the-rail-under-the-lowest = The rail under the lowest row of a block, screwed to the deck on a snapped line: everything is measured from it.
lesson-rows-of-modules-that-interlock = Rows of modules that interlock and are flashed as one.
lesson-bonding = bonding
lesson-joining-all-metal-so-that = Joining all metal so that it has one voltage, and a way to ground. Work for a qualified electrician.
lesson-chalk-line = chalk line
lesson-a-straight-line-snapped-on = A straight line snapped on the deck with a chalked string.
lesson-clearance = clearance
lesson-how-far-modules-stay-away = How far modules stay away from what comes through the roof.
lesson-counter-flashing = counter flashing
lesson-flashing-that-covers-the-upper = Flashing that covers the upper edge of other flashing.
lesson-course = course
lesson-one-row-of-shingles-its = One row of shingles; its exposure is what is to the weather.
lesson-cricket = cricket
lesson-a-small-ridge-behind-a = A small ridge behind a chimney that parts the water.
lesson-deck = deck
lesson-the-sheathing-of-the-roof = The sheathing of the roof, on which everything lies.
lesson-deck-mounted = deck-mounted
lesson-modules-screwed-straight-to-the = Modules screwed straight to the deck and flashed into the shingles, without racks over them.
lesson-downslope = downslope
lesson-the-way-in-which-water = The way in which water runs off a face.
lesson-drip-edge = drip edge
lesson-metal-along-eaves-and-rakes = Metal along eaves and rakes that leads water off the deck.
lesson-the-lower-level-edge-of = The lower, level edge of a face.
lesson-how-much-of-each-course = How much of each course shows, up the slope.
lesson-one-plane-of-the-roof = One plane of the roof.
lesson-finding = finding
lesson-what-a-rule-has-to = What a rule has to say about the job: something to stop for, to look at, or to know.
lesson-fit-up = fit-up
lesson-setting-out-the-array-on = Setting out the array on the deck as it really is, out of square and all.
lesson-flashing = flashing
lesson-sheet-metal-that-laps-into = Sheet metal that laps into the shingles so that water runs over it.
lesson-the-upright-end-of-a = The triangular wall at the end of a roof with two slopes.
lesson-head-flashing = head flashing
lesson-flashing-along-the-upper-edge = Flashing along the upper edge of a block, under the course above it.
lesson-where-two-faces-meet-outward = Where two faces meet outward, up a corner of the house.
lesson-ice-barrier = ice barrier
lesson-self-adhered-membrane-along-eaves = Self-adhered membrane along eaves where ice dams water up.
lesson-one-solar-panel-it-is = One solar panel. It is live whenever light falls on it.
lesson-overhang = overhang
lesson-pathway = pathway
lesson-a-strip-without-modules-on = A strip without modules on which firefighters climb to the ridge.
lesson-what-comes-through-the-roof = What comes through the roof: pipes, vents, chimneys, skylights.
lesson-pitch = pitch
lesson-rise-in-12-of-run = Rise in 12 of run: at 6:12 a roof rises 6 in over 12 in of plan.
lesson-the-sloping-edge-of-a = The sloping edge of a face at a gable.
lesson-reveal = reveal
lesson-the-gap-between-neighbouring-modules = The gap between neighboring modules.
lesson-the-level-line-at-the = The level line at the top where two faces meet.
lesson-setback = setback
lesson-how-far-modules-stay-away-from = How far modules stay away from an edge.
lesson-square = square
lesson-square-feet-of-roof = 100 square feet of roof.
lesson-takeoff = takeoff
lesson-counting-from-a-drawing-what = Counting from a drawing what has to be ordered.
lesson-underlayment = underlayment
lesson-the-layer-on-the-deck = The layer on the deck below shingles and array.
lesson-where-two-faces-meet-inward = Where two faces meet inward, and the water from both runs together.

## Lengths, directions, outlines

measures-north-east = north-east
measures-south-east = south-east
measures-south-west = south-west
measures-north-west = north-west
measures-no-length-was-given-type = no length was given: type one such as 12' 6 1/2", 12-6-8, 150.5 in or 3.82 m

# $value (text)
measures-cant-read-as-a-length = can't read { $value } as a length: type one such as 12' 6 1/2", 12-6-8, 150.5 in or 3.82 m

# $value (text)
measures-the-length-has-no-unit = the length { $value } has no unit: write it as "0.5 in", "12 ft", "40 mm" or "3.2 m"

# $value (text)
measures-cant-read-as-a-pitch = can't read { $value } as a pitch: type one such as 6:12, 6/12, 26.6°, 50% or 12" over 24"

# $value (text)
measures-a-pitch-of-in-12 = a pitch of { $value } in 12 can't be a roof face: it must be 0 or more and short of vertical

measures-three-points-on-one-line = three points on one line make no plane: give a third height away from the line of the other two
measures-these-heights-make-an-upright = these heights make an upright wall, not a roof face
measures-wall-line = wall line
measures-step = step
measures-pitch-change = pitch change

## The order and its prices

order-work-on-the-order = Work on the order…
order-all-lines-of-the-order = All lines of the order: change them, count what arrives, compare it with another
order-lines = Lines
order-roof-money-stock = Roof, money, stock
order-load-a-warehouse-list = Load a warehouse list…
order-with-another-job = With another job…
order-add-a-price-list = Add a price list…
order-load-counts = Load counts…
order-sort-by-it-once-more = Sort by it. Again: greatest first. Once more: as listed.
order-number-or-words = number or words
order-no-line-is-like-that = No line is like that.
order-which-lines-are-listed = Which lines are listed
order-without-headings = Without headings
order-changed-by-hand = Changed by hand
order-without-a-price = Without a price
order-columns = Columns
order-columns-help = Choose which columns are shown. Drag the line between two heads to make one wider.
order-change = Change
order-seen = Seen
order-seen-help = Count changes from now on
order-pin = Pin
order-pin-help = Count changes from this moment until you unpin, even when the order was closed in between
order-since-looked = since you last looked
order-since-pinned = since the pinned moment
order-totals-shown = Show how the total adds up: by stage of work, by group, materials and labor
order-lines-of-the-order = Lines of the order
order-walk-rows = Walk the rows of the order
order-walk-keys = Up, Down, Page Up, Page Down; Enter opens a line
order-leave-line = Leave a line out of the order, or order it again
order-space-bar = Space

# $column (text)
order-width-of = Width of column { $column }

order-materials-and-work = Materials and work
order-take-this-list = Take this price list
order-take-this-list-help = Price the order by it from here on
# $price (text)
order-price-was = Changed by hand: { $price } in the price list

# $packages (text)
order-packages-counted = Changed by hand: { $packages } as counted

# $count (number)
order-many-without-a-price =
    { $count ->
        [one] { $count } line without a price
       *[other] { $count } lines without a price
    }

# $count (number)
order-many-changed =
    { $count ->
        [one] { $count } line changed
       *[other] { $count } lines changed
    }

order-put-the-lines-that-are = Put the lines that are listed on the clipboard, for a spreadsheet
order-add-a-line = Add a line
order-something-that-the-kit-does = Something that the kit does not count
order-order-this-line-a-line = Order this line. A line that is off stays here, and every output says so.
order-packages-to-order-type-another = Packages to order. Type another number to put it in place of the count; empty is the count again.
order-for-one-package-in-this = For one package, in this job's own copy of the price list. Empty: no price, and every output says so.
order-a-whole-number = A whole number
order-such-as-184-50 = Such as 184.50
order-changed-in-this-job = , changed in this job
order-new-line = New line
order-piece = piece
order-reason = Reason
order-take-instead = Take instead
order-a-package-is-a = A package is a
order-needed-for = Needed for
order-take-the-line-away = Take the line away

# $count (number)
order-lines-are-on-the-clipboard = { $count ->
        [one] { $count } line is on
       *[other] { $count } lines are on
    } the clipboard.

# $number (text)
order-order = Order { $number }

# $number (text)
order-packages-of = Packages of { $number }

# $number (text)
order-price-of = Price of { $number }

order-leave-out = Leave out

# $number (text)
order-reason-for = Reason for { $number }

# $packages (text)
order-as-counted = As counted: { $packages }

# $number (text)
order-waste-of = Waste of { $number }

# $number (text)
order-own = Own { $number }

# $number (text)
order-another-part-for = Another part for { $number }

# $price (text)
order-the-kits-own = the kit's own, { $price }

# $number (text)
order-line = Line { $number }

# $number (text)
order-take-line-away = Take line { $number } away

order-the-roof = The roof
order-covered-anew = New roofing on
order-the-whole-roof = the whole roof
order-faces-with-modules = faces with modules
order-nothing-but-the-array = nothing but the array
order-some-faces-as-the-jobs = some faces, as the job's file says
order-old-layers-to-strip = Old layers to strip
order-to-5-layers = 0 to 5 layers
order-waste-as-for = Waste as for
order-the-roof-as-drawn = the roof as drawn
order-waste = Waste, %
order-by-whose-word = By whose word
order-the-offices-own-share-in = The office's own share, in place of the kit's. Empty: as the kit says.
order-to-100 = 0 to 100 %
order-the-office-has-its-own = The office has its own
order-it-comes-back-from-the = It comes back from the job: it is on the list to bring along, and nothing is bought.
order-taken-with-the-order = Taken with the order
order-sales-tax = Sales tax, %
order-empty-not-known-which-every = Empty: not known, and every output says so. It never counts as zero.
order-what-became-of-the-price = What became of the price list
order-on-top-of-the-cost = On top of the cost
order-overhead-of-the-cost = Overhead, % of the cost
order-markup-of-the-cost = markup: % of cost and overhead
order-margin-of-the-price = margin: % of the price
order-profit = Profit, %
order-stock-in-hand = Stock on hand
order-a-warehouse-list-csv-with = A warehouse list: CSV with the columns number, amount, and maybe note
order-none-what-lies-in-the = None. What lies in the warehouse is used before anything is bought.
order-add-what-is-left = Add what is left
order-such-as-40-100-ft = Such as 40, 100 ft, 200 sq ft
order-where-it-lies = Where it lies
order-remove = Remove

# $list (text)
# $date (text)
# $prices (number)
# $currency (text)
order-prices-in = { $list }, { $date }; { $prices ->
        [one] { $prices } price in
       *[other] { $prices } prices in
    } { $currency }

# $trim (text)
order-the-kit-has-no-part = The kit has no part { $trim }.

# $nth (text)
order-part-of-leftover = Part of leftover { $nth }

# $nth (text)
order-amount-of-leftover = Amount of leftover { $nth }

# $nth (text)
order-note-of-leftover = Note of leftover { $nth }

order-the-rest-came-whole = The rest came whole
order-all-lines-that-nobody-has = Everything on the lines that nobody has counted yet is there, and nothing is damaged
order-a-pallet-list-with-the = A pallet list with the column counted filled in, as CSV
order-print-the-list = Print the list…
order-print-the-claim = Print the claim…
order-copy-the-claim = Copy the claim
order-the-claim-is-on-the = The claim is on the clipboard.
order-about-the-delivery = About the delivery
order-state = State
order-all-of-it-is-there = All of it is there, and nothing is damaged

# $counted (text)
# $of (text)
order-of-lines-counted = { $counted } of { $of } lines counted

# $number (text)
order-count = Count { $number }

# $lines (number)
order-lines-are-counted = { $lines ->
        [one] { $lines } line is counted
       *[other] { $lines } lines are counted
    }.

# $number (text)
order-all-of-came = All of { $number } came

# $number (text)
order-came-of = Came of { $number }

# $number (text)
order-damaged-of = Damaged of { $number }

# $number (text)
order-note-of = Note of { $number }

# $came (text)
order-at-most = At most { $came }

order-waits = waits

# $one (text)
order-waits-for = waits for { $one }

# $first (text)
# $rest (text)
order-waits-for-and-more = waits for { $first }, and { $rest } more

order-another-order = Another order
order-keep-the-order-as-it = Keep the order as it is now, go on with the job, and see here what is more, what is less, and what it costs. Or compare it with another job.
order-keep-this-order-to-compare = Keep this order to compare
order-what-changes-from-here-on = Changes from here on show below; the kept order is not saved with the job
order-other-suppliers = Other suppliers
order-add-the-price-list-of = Add the price list of another supplier to see this order at its prices, line by line.
order-take-them-away = Remove these suppliers

# $job (text)
order-as-it-was = { $job }, as it was

# $name (text)
order-from-to-the-job-as = From { $name } to the job as it is:

# $lines (text)
# $money (text)
# $money2 (text)
# $in_common (text)
order-lines-sales-tax-delivery-lines = lines { $lines }, sales tax { $money }, delivery { $money2 }; lines that all have { $in_common }

# $cheapest (text)
order-each-line-where-it-is = Each line where it is cheapest (•): { $cheapest }

order-number-a-line-needs-a = number: a line needs a number

# $most_packages (text)
# $packages (text)
order-packages-must-be-at-most = packages must be at most { $most_packages }, not { $packages }

# $field (text)
# $most (text)
# $share (text)
order-must-be-0-to-with = { $field } must be 0 to { $most } with at most four decimals, not { $share }

# $number (text)
# $most_packages (text)
# $packages (text)
order-counts-packages-must-be-at = counts.{ $number }.packages must be at most { $most_packages }, not { $packages }

# $number (text)
# $damaged (text)
# $packages (text)
order-counts-damaged-cant-be-damaged = counts.{ $number }.damaged: { $damaged } can't be damaged of { $packages } that came

# $place (text)
# $text (text)
order-is-no-count-of-packages = { $place }: { $text } is not a count of packages

# $place (text)
# $cell (text)
order-is-counted-twice = { $place }: { $cell } is counted twice

order-number-a-leftover-needs-the = number: a leftover needs the number of its part

# $amount (text)
order-amount-must-be-0-or = amount must be 0 or more, not { $amount }

# $layers (text)
order-roof-layers-must-be-0 = roof.layers must be 0 to 5, not { $layers }

# $number (text)
# $share (text)
order-waste-share-is-a-share = waste.{ $number }.share is a share from 0 to 1, not { $share }

# $index (text)
# $line (text)
order-added-number-is-taken-twice = added[{ $index }].number: { $line } is taken twice

# $count (number)
order-prices-taken =
    { $count ->
        [one] { $count } price taken
       *[other] { $count } prices taken
    }

# $taken (text)
# $unknown (text)
# $left_alone (text)
order-unknown-to-the-kit-left = { $taken }, { $unknown } unknown to the kit, { $left_alone } left alone

order-not-in-the-kit = not in the kit

# $typed (text)
# $part (text)
order-as-2 = { $typed } as { $part }

order-read-as-the-kit-spells = read as the kit spells it
order-twice-with-the-same-price = twice with the same price
order-without-a-price-2 = without a price
order-sheets-not-read = sheets not read
order-rows-of-titles = rows of titles
order-parts-of-the-kit-without = parts of the kit without a price

# $place (text)
order-it-has-more-cells-than = { $place }: it has more cells than the header; put a number with a comma in quotes

order-the-list-must-say-its = the list must say its currency: a row without a number, with the name "currency"

# $place (text)
# $says (text)
# $other (text)
order-a-row-without-a-number = { $place }: a row without a number is one of { $says }, not { $other }

# $text (text)
# $currency (text)
order-is-not-in-the-currency = { $text } is not in { $currency }, the currency of the list

# $text (text)
order-a-price-cant-be-format = a price can't be { $text } %: format the cell as a number

# $text (text)
order-a-tax-of-can-be = a tax of { $text } can be a share or percent: write it with its sign, as 8.25 %

# $said (text)
order-under-untaxed-write-yes-or = { $said } under "untaxed": write yes or no

# $part (text)
# $package (text)
order-has-a-price-already-take = { $part } has a price already, { $package }; take one of them out

# $place (text)
# $typed (text)
order-the-list-has-no-price = { $place }: the list has no price for { $typed }, whose alternate this is

# $amount (text)
order-is-below-zero = { $amount } is below zero

# $amount (text)
# $most (text)
order-is-more-than = { $amount } is more than { $most }

# $amount (text)
order-has-more-than-four-decimals = { $amount } has more than four decimals

# $tax (text)
order-tax-percent-is-more-than = tax_percent: { $tax } is more than 100

## Lists beside the drawing

panels-stop = Stop
panels-caution = Caution
panels-findings-none = Findings: none

# $open (text)
panels-findings = Findings: { $open }

panels-nothing-to-check-yet-draw = Nothing to check yet: draw a face first.
panels-the-roof-holds-together-place = The roof holds together. Place a block, and the rules are checked as you move it.
panels-the-rules-of-this-book = The rules of this book found nothing. They are not all that can be wrong: read the cautions.

# $area (text)
# $area2 (text)
panels-on-the-slope-in-plan = { $area } on the slope, { $area2 } in plan

# $count (number)
panels-faces =
    { $count ->
        [one] { $count } face
       *[other] { $count } faces
    }

# $count (number)
panels-parts-without-a-price =
    { $count ->
        [one] {" "}+ { $count } part without a price
       *[other] {" "}+ { $count } parts without a price
    }

# $numbers (text)
panels-without-a-price-and-not = Without a price, and not in the total: { $numbers }

# $line (text)
# $line2 (text)
# $amount (text)
# $delta (text)
# $packages_words (text)
panels-order = { $line }, { $line2 }: { $amount }{ $delta }, order { $packages_words }

# $number (text)
# $name (text)
# $amount (text)
panels-none-left = { $number } { $name }: −{ $amount }, none left

# $waste (text)
# $with_waste (text)
# $packages (text)
panels-with-waste-in = with { $waste } % waste { $with_waste }, in { $packages }

# $packages (text)
panels-no-waste-added-in = no waste added, in { $packages }

## Parts of the house

part-parts-of-the-house = Parts of the house
part-a-dormer-porch-ell-or = A dormer, porch, ell or chimney: draw its footprint over the roof
part-eaves = Eaves
part-how-high-the-roof-is = How high the roof is over the wall lines, above the level that the job measures from.
part-top = Top
part-height-of-its-top-above = Height of its top above the level that the job measures from.
part-with-a-cricket = With a cricket
part-two-small-faces-upslope-of = Two small faces upslope of it that part the water.
part-cricket = Cricket
part-pitch-all-slopes = Pitch, all slopes
part-overhang-all = Overhang, all
part-various = various
part-own-eave = Own eave
part-height-of-this-sides-plane = Height of this side's plane over its wall. Empty: as the part's.
part-slope = slope
part-wall = wall
part-sides-wall-to-wall = Sides, wall to wall
part-set-free = Turn into plain faces
part-turn-its-faces-and-those = Turn its faces, and those of the parts that it meets, into plain faces that no part changes any more
part-delete-the-part = Delete the part

# $count (number)
part-the-kinds-of-edges-that =
    { $count ->
        [one] The kind of an edge that was set by hand went with its side. Undo brings it back.
       *[other] The kinds of { $count } edges that were set by hand went with their sides. Undo brings them back.
    }

part-its-part = Its part…
part-this-face-follows-from-a = This face follows from a part of the house: change its side here.
part-a-part-keeps-its-last = A part keeps its last three corners: delete the part instead.
part-here = here
part-dormer = Dormer
part-porch = Porch
part-lean-to = Lean-to
part-dormer-help = A small house on a slope, with a wall in front; its ridge runs back into the roof.
part-porch-help = One slope away from the house over a door; it runs up into the roof of the house.
part-lean-to-help = One slope away from the house, against its wall and under its eaves.
part-ell-help = A wing across the house; its ridge runs into the roof, with a valley at each side.
part-chimney-help = A box through the roof, with a cricket behind it where it is wide.

# $name (text)
part-part = Part { $name }

# $part (text)
# $kind (text)
# $sides (text)
part-part-sides = Part { $part }, { $kind }, { $sides } sides

# $corner (text)
# $part (text)
part-corner-of-part = Corner { $corner } of part { $part }

# $side (text)
part-stands-on-side = Stands on side { $side }

part-has = has
part-have = have
part-it = it
part-them = them

# $blocks (text)
# $verb (text)
# $blocks2 (text)
part-no-face-under-now-it = { $blocks } { $verb } no face under { $blocks2 } now: wait for the face to come back, or drag to another one.

part-nothing-of-it-is-seen = Nothing of it is seen: it lies under other parts. Raise its eaves, or move it.
part-no-cricket-stands-there-the = No cricket stands there: the chimney has no side that looks up a slope. Move it off the ridge.

## Pictures

picture-picture = Picture
picture-lay-an-aerial-photo-or = Lay an aerial photo or a sketch under the plan, to draw over
picture-picture-under-the-plan = Picture under the plan
picture-picture-under-the-plan-2 = Picture under the plan…
picture-choose-a-picture = Choose a picture…
picture-choose-another = Choose another…
picture-an-aerial-photo-or-a = An aerial photo or a sketch to draw over: a PNG or JPEG. Choose one, or drop it on the window.
picture-reading-the-picture-broke-off = Reading the picture stopped partway: choose it again.
picture-the-file-holds-another-picture = The file holds a different picture from the one that was laid here. See whether it still lies right.
picture-the-file-holds-a-picture = The file holds a picture of a different shape from the one that was laid here, so it is not drawn.
picture-take-it-as-it-is = Take it as it is now
picture-look-again = Look again
picture-the-picture-is-being-read = The picture is being read…
picture-this-picture-cant-be-laid = This picture can't be laid under the plan
picture-move-2 = Move
picture-turn = Turn
picture-scale = Scale
picture-crop = Crop
picture-drag-the-picture-or-move = Drag the picture, or move it with the arrow keys
picture-drag-around-the-pictures-middle = Drag around the picture's middle; or click two points of a line that should be square
picture-click-two-points-whose-distance = Click two points whose distance you know, then type it
picture-drag-over-the-part-that = Drag over the part that should show
picture-length-on-the-ground = Length on the ground
picture-make-the-line-square = Make the line square
picture-turn-the-picture-so-that = Turn the picture so that the line runs due east–west or north–south
picture-width = Width
picture-how-wide-the-whole-picture = How wide the whole picture is on the ground. It keeps its proportions.
picture-turned-by = Turned by
picture-degrees-clockwise = Degrees clockwise.
picture-where-the-middle-of-the = Where the middle of the whole picture lies.
picture-dimmed-by = Dimmed by
picture-dim-the-picture = Dim the picture
picture-cropped-in-percent-of-the = Cropped, in percent of the picture
picture-from-the-top = From the top
picture-from-the-right = From the right
picture-from-the-bottom = From the bottom
picture-show-all-of-it = Show all of it
picture-take-it-away = Take it away
picture-something-of-the-picture-must = Some of the picture must be left: type less.
picture-the-picture-would-be-of = The picture would not have a sensible size: click two points farther apart.
picture-type-a-number-from-0 = Type a number from 0 to 100.
picture-type-degrees-such-as-12 = Type degrees, such as 12.5.
picture-lay-a-picture-under-the = lay a picture under the plan
picture-move-the-picture = move the picture
picture-turn-the-picture = turn the picture
picture-scale-the-picture = scale the picture
picture-crop-the-picture = crop the picture
picture-dim-the-picture-2 = dim the picture
picture-take-the-changed-picture = take the changed picture
picture-take-the-picture-away = take the picture away

# $picture_name (text)
picture-lies-under-the-plan-set = { $picture_name } lies under the plan. Set its scale: click two points whose distance you know.

# $size (text)
# $size2 (text)
# $pixels (text)
# $pixels2 (text)
picture-on-the-ground-pixels = { $size } × { $size2 } on the ground, { $pixels } × { $pixels2 } pixels

# $picture_name (text)
picture-cant-be-shown = { $picture_name } can't be shown

picture-click-a-point-then-another = Click a point, then another one whose distance from it you know.
picture-click-the-other-point = Click the other point.
picture-type-how-far-apart-they = Type how far apart they are on the ground.

# $value (text)
# $value2 (text)
picture-a-picture-of-pixels-cant = a picture of { $value } × { $value2 } pixels can't be written: it has no area

# $value (text)
picture-the-picture-cant-be-written = the picture can't be written as PNG: { $value }

picture-the-letters-of-the-picture = the picture's font can't be read

# $value (text)
# $value2 (text)
picture-a-picture-of-pixels-cant-hold = a picture of { $value } × { $value2 } pixels can't hold what must stand on it: make it larger

## Reports in text

report-pathways-for-the-fire-service =
    Pathways for the fire department
    {""}

report-none-found =
    {"  "}none found
    {""}

report-straight-up-the-slope = straight up the slope
report-winding = winding

# $on (text)
# $width (text)
# $way (text)
report-wide-in-plan = {"  "}{ $on }: { $width } wide in plan, { $way }

report-wind-suction-a-screening =
    {""}
    Wind suction, a screening
    {""}

# $zone (text)
# $psf (text)
report-zone-psf = zone { $zone } { $psf } psf

# $refused (text)
report-not-worked-out = {"  "}not worked out: { $refused }

# $key (text)
report-nothing-is-found-by-the = nothing is found by the key { $key }: take one from `check --format json`

# $wrong (text)
report-not-done = {"   "}NOT DONE: { $wrong }

report-changes-nothing = {"   "}changes nothing

# $before (text)
# $after (text)
report-modules = {"   "}modules { $before } → { $after }

# $before (text)
# $after (text)
report-findings-to-stop-for = {"   "}findings to stop for { $before } → { $after }

# $key (text)
report-new = {"     "}new: { $key }

# $key (text)
report-no-more = {"     "}no more: { $key }

# $modules (number)
# $stops (number)
report-modules-findings-to-stop-for =
    {""}
    { $modules ->
        [one] { $modules } module
       *[other] { $modules } modules
    }, { $stops ->
        [one] { $stops } finding to stop for
       *[other] { $stops } findings to stop for
    }.

report-none = none
report-stop = STOP
report-caution = CAUTION
report-note = NOTE

# $source (text)
report-source = {"    "}source: { $source }

# $fix (text)
report-fix = {"    "}fix: { $fix }

# $lapsed (text)
report-waiver-lapsed = {"    "}WAIVER LAPSED: { $lapsed }

# $by (text)
# $date (text)
# $reason (text)
report-waived-by-on = {"    "}WAIVED by { $by } on { $date }: { $reason }

# $key (text)
report-key = {"    "}key: { $key }

# $job (text)
# $book (text)
# $date (text)
# $based_on (text)
report-rule-book =
    { $job }
    Rule book: { $book } ({ $date })
    { $based_on }

    {""}

# $count (text)
# $count2 (text)
# $count3 (text)
# $waived (text)
report-to-stop-for-to-look =
    { $count } to stop for, { $count2 } to look at, { $count3 } to know, { $waived } waived.
    {""}

report-what-was-checked =
    What was checked
    {""}

# $title (text)
# $rule (text)
# $source (text)
report-source-2 =
    {"  "}{ $title } [{ $rule }]
    {"    "}source: { $source }

report-what-was-not-checked =
    {""}
    What was not checked
    {""}

report-every-rule-of-this-program =
    {"  "}every rule of this program was; they are not all that can be wrong
    {""}

# $title (text)
# $rule (text)
# $why (text)
report-because =
    {"  "}{ $title } [{ $rule }]
    {"    "}because: { $why }

# $job (text)
# $rule_book (text)
report-crew-checklist-after-the-rule =
    { $job }
    Crew checklist, after the rule book { $rule_book }
    {""}

# $line (text)
# $source (text)
report-source-3 =
    {"  "}[ ] { $line }
    {"      "}source: { $source }

# $one (text)
# $date (text)
# $other (text)
# $date2 (text)
report-one-other =
    one:   { $one }, { $date }
    other: { $other }, { $date2 }
    {""}

# $differences (number)
report-fields-differ =
    {""}
    { $differences ->
        [one] { $differences } field differs
       *[other] { $differences } fields differ
    }

# $field (text)
# $said (text)
# $said2 (text)
report-one-other-2 =
    {""}
    { $field }
    {"  "}one:   { $said }
    {"  "}other: { $said2 }

# $modules_words (text)
# $kilowatts (text)
# $modules_kg (text)
# $area_text (text)
# $area_text2 (text)
# $area_text3 (text)
report-kw-kg-of-modules-roof =
    {""}
    { $modules_words }, { $kilowatts } kW, { $modules_kg } kg of modules
    Roof: { $area_text } in plan, { $area_text2 } on the slope; array { $area_text3 }

    Faces

report-outline-is-wrong-see-the = {"  "}(outline is wrong: see the findings)

# $face (text)
# $pitch (text)
# $downslope (text)
# $area_text (text)
# $area_text2 (text)
# $state (text)
report-falls-in-plan-on-the = {"  "}{ $face } { $pitch }  falls { $downslope } { $area_text } in plan { $area_text2 } on the slope{ $state }

report-lines-of-the-roof =
    {""}
    Lines of the roof
    {""}

report-blocks =
    {""}
    Blocks
    {""}

# $block (text)
# $face (text)
report-on-all-modules-are-switched = {"  "}{ $block } on { $face }: all modules are switched off

# $block (text)
# $face (text)
# $rows_words (text)
# $modules_words (text)
# $from (text)
# $from2 (text)
report-on-base-rail-its-left = {"  "}{ $block } on { $face }: { $rows_words }, { $modules_words }; base rail { $from }, its left end { $from2 } along it

report-findings =
    {""}
    Findings
    {""}

report-none-against-this-rule-book =
    {"  "}none against this rule book

    {""}

# $count (number)
# $each (text)
report-rows-of =
    { $count ->
        [one] { $count } row of { $each }
       *[other] { $count } rows of { $each }
    }

# $job (text)
report-roof =
    { $job }
    Roof
    {""}

report-squares-100-ft-no-waste = Squares (100 ft², no waste)

report-faces-pitch-falls-in-plan =
    {""}
    Faces                 pitch     falls           in plan    on the slope  squares
    {""}

report-edges-true-length =
    {""}
    Edges, true length
    {""}

# $problems (number)
report-the-roof-does-not-hold =
    {""}
    The roof does not hold together in { $problems ->
        [one] { $problems } place
       *[other] { $problems } places
    }: see the findings.

# $caution (text)
report-heights-are-above-the-level =
    {""}
    Heights are above the level from which the job measures them.
    { $caution }

# $least (text)
# $most (text)
report-to = { $least } to { $most }

report-border = border
report-the-pathway-for-the-fire = the pathway for the fire department
report-another-block = another block

# $name (text)
report-block = block { $name }

# $kind (phrase)
report-the-setback-from-the = the setback from the { $kind }

# $kind (phrase)
report-the-room-for-flashing-beside = the room for flashing beside the { $kind }

report-the-courses-below-the-ridge = the courses below the ridge
report-the-deck-that-the-base = the deck that the base rail needs

# $kind (text)
report-the-room-below-the-base = the room below the base rail at the { $kind }

# $kind (text)
report-the-fire-services-room-beside = the fire department's room beside the { $kind }

report-the-edge-of-the-face = the edge of the face

# $kind (text)
report-the-room-beside-the = the room beside the { $kind }

# $wind (text)
# $kind (text)
report-wind-kind = { $wind } { $kind }

## Raising a roof

# $near (text)
# $near2 (text)
roof-roofs-cant-be-told-apart = roofs can't be told apart near x { $near } m, y { $near2 } m: move a corner there by a few millimeters

roof-a-rise-in-12 = a rise in 12
roof-a-level-side-never-closes = a level side never closes over the footprint; give it a pitch or make it a gable
roof-an-eave-height = an eave height
roof-give-a-height-within-10 = give a height within 10 km
roof-an-overhang = an overhang
roof-give-0-or-more-up = give 0 or more, up to 100 m

# $outline_words (text)
roof-the-footprint-cant-be-used = the footprint can't be used: { $outline_words }

# $ring_words (text)
# $corners (text)
# $given (text)
roof-has-sides-but-are-described = { $ring_words } has { $corners } sides, but { $given } are described: describe each one

# $side_words (text)
# $what (text)
# $value (text)
# $remedy (text)
roof-has-of = { $side_words } has { $what } of { $value }: { $remedy }

# $side_words (phrase)
# $near (text)
# $near2 (text)
roof-the-overhangs-around-run-into = the overhangs around { $side_words } run into each other at x { $near } m, y { $near2 } m: make them narrower or simplify the corner

# $side_words (phrase)
roof-nothing-slopes-over-the-part = nothing slopes over the part beside { $side_words }: give it, or a side near it, a pitch

# $near (text)
# $near2 (text)
# $corner (text)
# $ring_words (phrase)
roof-the-roof-cant-be-worked = the roof can't be worked out near x { $near } m, y { $near2 } m, by corner { $corner } of { $ring_words }: move that corner by a few millimeters

# $side (text)
# $ring_words (phrase)
roof-side-of = side { $side } of { $ring_words }

# $corner (text)
# $ring_words (phrase)
roof-corner-of-is-no-usable = corner { $corner } of { $ring_words } is not a usable number: enter it again

# $ring_words (text)
roof-has-fewer-than-three-corners = { $ring_words } has fewer than three corners: draw at least three

# $corner (text)
# $ring_words (phrase)
roof-corner-of-lies-on-the = corner { $corner } of { $ring_words } lies on the corner before it: delete one of the two

# $ring_words (text)
roof-encloses-nothing-move-its-corners = { $ring_words } encloses nothing: move its corners apart

# $at (text)
# $at2 (text)
roof-two-sides-meet-at-x = two sides meet at x { $at } m, y { $at2 } m: pull them apart

# $ring_words (text)
roof-is-not-inside-the-outline = { $ring_words } is not inside the outline, or is inside another hole: move it

## The rule book

# $field (text)
rulebook-fire-access-must-be-0 = fire_access.{ $field } must be 0 or more and below 100 m

# $field (text)
# $share (text)
rulebook-fire-access-ridge-is-a = fire_access.ridge.{ $field } is a share from 0 to 1, not { $share }

rulebook-say-where-the-limit-comes = say where the limit comes from: a section, a listing, or “common practice, no source”

# $field (text)
rulebook-this-rule-book-has-no = this rule book has no limit { $field }

# $field (text)
rulebook-the-limit-is-of-another = the limit { $field } is of another kind

rulebook-setbacks-on-the-slope = Setbacks, on the slope

# $kind (text)
rulebook-from = From { $kind }

rulebook-clearances-on-the-slope = Clearances, on the slope

# $kind (text)
rulebook-to = To { $kind }

rulebook-above = Above
rulebook-below = Below
rulebook-clearances-by-side-where-more = Clearances by side, where more
rulebook-the-array = The array
rulebook-full-courses-left-to-the = Full courses left to the ridge
rulebook-share-of-a-lower-edge = Share of a lower edge that hooks in
rulebook-pathways = Pathways
rulebook-least-width-of-a-pathway = Least width of a pathway
rulebook-one-on-the-street-side = One on the street side
rulebook-exempt-up-to-a-pitch = Exempt up to a pitch of
rulebook-beside-a-ridge-smaller-array = Beside a ridge, smaller array
rulebook-beside-a-ridge-larger-array = Beside a ridge, larger array
rulebook-smaller-array-share-of-the = Smaller array: share of the roof
rulebook-the-same-with-sprinklers = The same with sprinklers
rulebook-beside-a-hip-or-valley = Beside a hip or valley
rulebook-free-below-an-escape-window = Free below an escape window, at least
rulebook-roof-integrated-is-exempt = Roof-integrated is exempt
rulebook-least-pitch-for-shingles = Least pitch for shingles
rulebook-one-underlayment-from = One underlayment from
rulebook-cricket-behind-wider-than = Cricket behind what is wider than
rulebook-side-flashing-to-a-valleys = Side flashing to a valley's line
rulebook-side-flashing-to-a-hips = Side flashing to a hip's line
rulebook-fire-class-where-a-lot = Fire class where a lot line is nearer than
rulebook-ice-barrier-inside-the-wall = Ice barrier inside the wall
rulebook-ice-barrier-steep-from = Ice barrier, steep from
rulebook-ice-barrier-steep-length = Ice barrier, steep length
rulebook-edition = Edition
rulebook-wind-factor = Wind factor
rulebook-dead-load-factor = Dead load factor
rulebook-least-pressure = Least pressure

# $field (text)
rulebook-loads-is-out-of-range = loads.{ $field } is out of range

rulebook-room-beside-hips-and-valleys = Room beside hips and valleys
rulebook-room-below-escape-windows = Room below escape windows
rulebook-exemption-of-roof-integrated-arrays = Exemption of roof-integrated arrays
rulebook-side-flashing-to-valleys = Side flashing to valleys
rulebook-side-flashing-to-hips = Side flashing to hips
rulebook-fire-class-near-a-lot = Fire class near a lot line

# $part (text)
rulebook-no-book-that-comes-with = none of the books that come with the program has { $part }

# $part (text)
rulebook-this-rule-book-has-no-place = this rule book has no place for { $part }

# $field (text)
rulebook-roofing-must-be-0-or = roofing.{ $field } must be 0 or more and below 100 m

# $field (text)
rulebook-must-be-0-or-more = { $field } must be 0 or more and below 100 m

rulebook-hooked-share-is-a-share = hooked_share is a share from 0 to 1

## Rules, findings and checklist

# $small (text)
# $kind (text)
rules-flashing-from-the = flashing { $small } from the { $kind }

# $small (text)
rules-of-courses-left-below-the = { $small } of courses left below the ridge

rules-the-base-rail-ends-with = the base rail ends with the deck

# $small (text)
# $kind (text)
rules-the-base-rail-above-the = the base rail { $small } above the { $kind }

# $small (text)
# $kind (text)
rules-in-plan-from-the-for = { $small } in plan from the { $kind }, for the fire department

# $penetration (text)
rules-beside-the-strip-below = beside the strip below { $penetration }

# $small (text)
# $kind (text)
rules-from-the = { $small } from the { $kind }

rules-rule-book = Rule book…
rules-save-the-rule-book-as = Save the rule book as…
rules-compare-with-a-rule-book = Compare with a rule book of yours…
rules-crew-checklist = Crew checklist
rules-pathways-for-the-fire-service = Pathways for the fire department
rules-house-and-place = House and place
rules-what-rules-need-to-know = What rules need to know. What is not known is not assumed: the rules that need it say that they were not checked.
rules-the-house = The house
rules-fasteners-of-the-array = Fasteners of the array
rules-sprinklers-throughout = Sprinklers throughout
rules-an-automatic-sprinkler-system-in = An automatic sprinkler system in the whole house. Yes or no; most older houses have none (from memory). With one, a larger array may keep the smaller room beside the ridge. Source: IRC R324.6.2.1; the plans or the fire official.
rules-detached-nobody-lives-in-it = Detached, nobody lives in it
rules-a-shed-or-carport-that = A shed or carport that stands by itself. Yes or no; a house is not one. Source: IRC R324.6, exceptions.
rules-streets-lie-to = Streets lie to
rules-the-ways-in-which-a = The directions in which a street or driveway lies: degrees clockwise from north, or compass points, with commas between: S, 90. Most houses have one or two (from memory). Source: IRC R324.6.1; the site plan.
rules-no-roof-work = No roof work
rules-who-of-the-fire-service = Who at the fire department found that nobody will work on this roof, and when; empty if nobody did, as on most houses. Source: IRC R324.6, exceptions; keep the letter with the permit.
rules-listing-read-by = Who read listing
rules-who-read-the-listing-by = Who read the listing by which this roof-integrated array is exempt from fire access, and when; empty where nobody did. Source: the product's listing, and the edition adopted where the house stands.
rules-from-the-ground-to-the = From the ground to the eave, a length; 9 ft on one story, 18 ft on two (from memory). Source: measured on site.
rules-least-width = Least width
rules-the-least-width-of-the = The least width of the house in plan, a length; 24 to 40 ft are usual (from memory). It sets how wide the strips of high wind suction are. Source: measured on site; ASCE/SEI 7, chapter 30.
rules-how-far-the-eave-reaches = How far the eave reaches beyond the outer wall, in plan; 12 to 24 in are usual (from memory). It sets how far up an ice barrier goes. Source: measured on site; IRC R905.1.2.
rules-wind-mph = Wind, mph
rules-basic-wind-speed-for-the = Basic wind speed for the house's risk category, miles an hour, 3-second gust; often 105 to 120 inland and more by the coast (from memory). Source: the maps of ASCE/SEI 7, chapter 26, or the building department.
rules-by-the-ground-upwind-b = By the ground upwind: B is town or woods, C open country, D flat ground by open water. Most houses in towns are B (from memory). Source: ASCE/SEI 7, section 26.7.
rules-b-town-wood = B: town, wood
rules-c-open-country = C: open country
rules-d-open-water = D: open water
rules-elevation = Elevation
rules-of-the-ground-above-sea = Of the ground above sea level, a length; left empty, the air counts as at sea level, the safe side. Source: a survey map; ASCE/SEI 7, section 26.9.
rules-snow-psf = Snow, psf
rules-ground-snow-load-pounds-a = Ground snow load, pounds a square foot, as the book's edition gives it; 0 in the south, 20 to 50 where winters are cold (from memory). Source: ASCE/SEI 7, chapter 7, or the building department.
rules-one-holds-lb = Fastener holds, lb
rules-what-one-fastener-of-the = What one fastener of the array holds against uplift, pounds, allowable: tested or listed. There is no typical value to lean on. Source: the maker's listing or test report for this deck.
rules-deck-each-ft = Its deck, ft²
rules-deck-under-one-such-fastener = Deck under one such fastener, square feet; 2 to 6 are usual (from memory). Source: the maker's layout of fasteners.
rules-the-deck = The deck
rules-the-covering = The covering
rules-sheathing = Sheathing
rules-how-thick-the-sheathing-is = How thick the sheathing is, a length; 7/16 to 5/8 in are usual (from memory). Source: measured at an edge or a vent.
rules-made-of = Made of
rules-what-the-sheathing-is-made = What the sheathing is made of; OSB or plywood on most houses since the 1970s (from memory). Source: seen from below.
rules-rafters-every = Rafters every
rules-from-rafter-to-rafter-middle = From rafter to rafter, middle to middle; 16 or 24 in are usual (from memory). Source: measured from below.
rules-its-state = Its state
rules-what-state-the-deck-is = What state the deck is in, once somebody has looked at it from below or after tear-off. Source: common practice, no source.
rules-sound = sound
rules-needs-repair = needs repair
rules-metal-along-eaves-and-rakes = Metal along eaves and rakes that leads water off the deck. Source: IRC R905.2.8.5 (2018); seen on site.
rules-there-and-stays = there, and stays
rules-goes-on-with-this-job = goes on with this job
rules-the-class-against-fire-of = The fire class of the covering beyond the array; most fiberglass shingles are class A (from memory). Source: the package of the shingles; UL 790 or ASTM E108.
rules-law-asks = Class required
rules-the-class-that-the-law = The class that the law asks for where the house stands; “no class” where it asks for none. Source: IRC R902.1 (2018); the building department.
rules-lot-line = Lot line
rules-from-the-nearest-edge-of = From the nearest edge of the roof deck to a lot line, in plan. Nearer than 3 ft, a fire class is required. Source: IRC R902.1 (2018); the site plan.
rules-zones-of-wind-suction = Zones of wind suction
rules-zones-of-components-and-cladding = Zones of components and cladding by ASCE/SEI 7, with the outward pressure in each: a screening, never a design. It needs wind, exposure, eave height and least width under House and place.

# $zone (text)
# $psf (text)
rules-zone-psf = zone { $zone }: { $psf } psf

rules-not-drawn =
    {""}
    Not drawn:{" "}

rules-a-screening-design-by-a =
    {""}
    A screening. Design by a licensed engineer.

rules-type-a-number-such-as = Type a number, such as 115.

# $least (text)
# $most (text)
rules-type-a-number-from-to = Type a number from { $least } to { $most }.

rules-this-length-cant-be-right = This length can't be right: it must be 0 or more and below 10,000 ft.
rules-the-rule-book-could-not = The rule book could not be saved
rules-book = Book
rules-based-on = Based on
rules-limits = Limits
rules-rules = Rules
rules-show = Show
rules-every-limit-of-the-book = Every limit of the book, with its source; change, save and compare it.
rules-change-the-source = Change the source
rules-no = no
rules-compare-with = Compare with
rules-choose-a-book = choose a book
rules-from-a-file = From a file…
rules-the-two-books-say-the = The two books say the same.
rules-this-book = this book
rules-the-other = the other
rules-a-rule-that-is-off = A rule that is off is listed in every report under what was not checked.
rules-type-a-share-such-as = Type a share, such as 33 % or 0.33.
rules-choose-another-rule-book = choose another rule book
rules-change-the-books-heading = change the book's heading

# $row (text)
rules-change-the-rule-book = change the rule book: { $row }

# $row (text)
rules-change-the-source-of = change the source of: { $row }

rules-on = on
rules-off = off

# $on (text)
# $title (text)
rules-switch-the-rule = switch { $on } the rule: { $title }

rules-two-on-the-roof-one = two on the roof, one by each plane
rules-on-each-slope-with-modules = on each slope with modules
rules-in-doubt-quoted-from-memory = In doubt: quoted from memory. Confirm it against the text.
rules-in-doubt-the-code-leaves = In doubt: the code leaves it open. Ask the official.
rules-read-in-the-text = read in the text
rules-the-text-leaves-it-open = the text leaves it open
rules-from-memory = from memory
rules-the-makers-word = the maker's word
rules-the-offices-own = the office's own
rules-common-practice = common practice
rules-how-far-it-can-be = How far it can be relied on
rules-none-in-this-book = none in this book
rules-no-limit-of-its-own = No limit of its own: modules must stay on the face and off the hole.
rules-parts-of-this-book = Parts of this book
rules-a-part-that-the-book = A part that the book does not have is not checked, and every report says so. A part that is put in comes with the numbers and sources of the program's own books: read them, and change what your jurisdiction has amended.
rules-puts-this-part-in-as = Puts this part in as the program's own books have it
rules-takes-this-part-out-what = Takes this part out: what it asks is no longer checked

# $part (text)
rules-put-in = Put in: { $part }

# $part (text)
rules-take-out = Take out: { $part }

# $count (number)
# $other (text)
rules-fields-differ-from =
    { $count ->
        [one] { $count } field differs from “{ $other }”.
       *[other] { $count } fields differ from “{ $other }”.
    }

rules-its-source = , its source
rules-how-far-its-source-can = , how far its source can be relied on
rules-only-what-is-held = Only the selected
rules-only-findings-on-the-face = Only findings on the face, block or penetration that is selected
rules-show-all = Show all

# $count (text)
rules-to-stop-for = { $count } to stop for

# $count (text)
rules-to-look-at = { $count } to look at

# $count (text)
rules-to-know = { $count } to know

# $count (number)
rules-findings-are-hidden-by-the =
    { $count ->
        [one] { $count } finding is hidden by the filter.
       *[other] { $count } findings are hidden by the filter.
    }

# $on (text)
# $checked (text)
rules-what-was-checked-of-rules = What was checked: { $on } of { $checked } rules

# $book (text)
rules-against-these-rules-are-not = Against { $book }. These rules are not all that can be wrong.

# $unwrap_or_default (text)
rules-not-checked = Not checked: { $unwrap_or_default }

# $width (text)
rules-pathway = pathway { $width }

# $width (text)
rules-pathway-winding = pathway { $width }, winding

rules-the-checklist-is-on-the = The checklist is on the clipboard.
rules-from-the-rule-book-and = From the rule book and the roof as drawn. It prints with the job; it does not replace the crew's own plan.
rules-cost-by-part-of-the = Cost by part of the order
rules-bar-chart-of-the-cost = Bar chart of the cost by stage of work
rules-as-rows-are-added-from = As rows are added from the eave up
rules-lines-without-a-price-are = Lines without a price are left out. Groups and stages are before tax and delivery; the total has all.
rules-bar-chart-of-the-cost-by = Bar chart of the cost by group
rules-bar-chart-of-the-total = Bar chart of the total by number of modules

# $title (text)
rules-sketch = Sketch: { $title }

# $length (text)
rules-as-the-house-is-drawn = As the house is drawn: { $length }

rules-blocks-lie-on-a-face = Blocks lie on a face whose outline holds together
rules-nothing-can-be-placed-measured = Nothing can be placed, measured or counted on an outline that folds over itself.
rules-geometry-no-deck-can-be = geometry: no deck can be measured there
rules-faces-are-steep-enough-for = Faces are steep enough for the kit
rules-lapped-flashing-sheds-water-only = Lapped flashing sheds water only where it runs off fast enough.
rules-modules-lie-on-their-face = Modules lie on their face
rules-a-module-is-screwed-to = A module is screwed to the deck under it: where there is no deck there is no module.
rules-geometry-no-deck-is-there = geometry: no deck is there
rules-no-module-lies-on-another = No module lies on another
rules-two-modules-cant-have-one = Two modules can't have one place.
rules-geometry-two-modules-cant-have = geometry: two modules can't have one place
rules-modules-keep-each-edges-setback = Modules keep each edge's setback
rules-edges-need-room-for-drip = Edges need room: for drip edge, starter and flashing, for water, for a foot, for the fire department.
rules-modules-keep-clear-of-what = Modules keep clear of what comes through the roof
rules-a-boot-a-curb-or = A boot, a curb or a chimney needs its own flashing, and room to mend it.
rules-flashing-keeps-off-valleys-and = Flashing keeps off valleys and hips
rules-a-nail-in-a-valley = A nail in a valley lining lets water in, and flashing under hip caps lifts them.
rules-full-courses-are-left-between = Full courses are left between the head flashing and the ridge
rules-the-course-above-laps-the = The course above laps the head flashing, and the ridge cap needs a course to lie on.
rules-the-base-rail-is-where = The base rail is where the kit lets it be
rules-the-rail-carries-the-block = The rail carries the block: it needs deck under all of it, room for the starter below, and room to grow.
rules-the-deck-is-one-that = The deck is one that the kit may be screwed to
rules-all-that-holds-the-array = All that holds the array are screws in the deck.
rules-modules-hook-into-the-row = Modules hook into the row below
rules-the-row-below-holds-a = The row below holds a module; where nothing is below, nothing holds it.
rules-rows-and-base-rail-are = Rows and base rail are laid as the kit says
rules-modules-interlock-only-in-the = Modules interlock only in the ways they were made for, and a rail between courses can't be flashed.
rules-the-reveal-is-within-the = The reveal is within the kit's range
rules-modules-need-room-to-grow = Modules need room to grow in the sun, and seals a gap that they can close.
rules-blocks-leave-room-for-each = Blocks leave room for each other's flashing
rules-side-flashing-of-two-blocks = Side flashing of two blocks must not overlap, and someone must be able to mend it.

# $face_of (text)
rules-whose-outline-does-not-hold = { $face_of }, whose outline does not hold together. Mend the outline first

# $rests (text)
rules-face-which-is-gone-its = face { $rests }, which is gone: that side of the house has no roof now. Put the block on another face, or bring the face back

rules-a-face-that-the-job = a face that the job does not have. Put the block on another face
rules-an-outline-with-defects = an outline with defects
rules-no-face = no face

# $sentence (text)
# $what (text)
rules-lies-on-nothing-on-it = { $sentence } lies on { $what }; nothing on it is checked until then.

rules-a-face-with-a-sound = a face with a sound outline

# $sentence (text)
# $face_of (text)
# $measured (text)
# $required (text)
rules-lies-on-which-is-the = { $sentence } lies on { $face_of }, which is { $measured }; the kit asks { $required } or more. This kit can't go on this face: choose a steeper face, or another kit that its maker allows here.

rules-lies = lies

# $modules (text)
rules-lies-with = lies with { $modules }

rules-border = border

# $sentence (text)
# $reach (text)
# $over (text)
# $edge (phrase)
# $face_of (phrase)
rules-up-to-over-the-of = { $sentence } { $reach } up to { $over } over the { $edge } of { $face_of }.

# $over (text)
rules-over = { $over } over

rules-all-on-the-face = all on the face

# $sentence (text)
# $deep (text)
# $block (phrase)
rules-lies-up-to-over = { $sentence } lies up to { $deep } over { $block }.

# $deep (text)
rules-over-2 = { $deep } over

rules-beside-each-other = beside each other

# $sentence (text)
# $block_of (phrase)
# $deep (text)
rules-of-are-shifted-up-to = { $sentence } of { $block_of } are shifted up to { $deep } over the module before them in their row.

# $the_edge (text)
# $face_of (phrase)
rules-the-of = the { $the_edge } of { $face_of }

# $face_of (phrase)
rules-the-border-of = the border of { $face_of }

rules-a-pathway = a pathway

# $sentence (text)
# $near (text)
# $from (phrase)
# $rule (text)
# $required (text)
rules-is-from-the-limit-asks = { $sentence } is { $near } from { $from }; the limit “{ $rule }” asks { $required }.

# $near (text)
# $the_kind (phrase)
# $on (phrase)
rules-is-from-the-of = is { $near } from the { $the_kind } of { $on }

# $the_kind (phrase)
# $on (phrase)
rules-lies-on-or-over-the = lies on or over the { $the_kind } of { $on }

# $sentence (text)
# $is (text)
# $required (text)
rules-the-book-asks = { $sentence } { $is }; the book asks { $required }.

# $near (text)
# $the_penetration (phrase)
rules-is-from = is { $near } from { $the_penetration }

# $the_penetration (phrase)
rules-lies-on = lies on { $the_penetration }

# $near (text)
# $the_penetration (phrase)
rules-is-above = is { $near } above { $the_penetration }

# $near (text)
# $the_penetration (phrase)
rules-is-below = is { $near } below { $the_penetration }

rules-it-is-to-have = it is to have
rules-the-book-asks-2 = the book asks

# $sentence (text)
# $is (text)
# $whose (text)
# $required (text)
rules-sentence-is = { $sentence } { $is }; { $whose } { $required }.

# $near (text)
# $the_kind (phrase)
rules-comes-within-of-the = comes within { $near } of the { $the_kind }

# $the_kind (text)
rules-lies-on-the = lies on the { $the_kind }

# $block_of (phrase)
# $length (text)
# $comes (text)
# $face_of (phrase)
# $required (text)
rules-the-side-flashing-of-wide = The side flashing of { $block_of }, { $length } wide, { $comes } of { $face_of }; the book asks { $required }.

# $courses (text)
# $courses2 (text)
# $length (text)
rules-whole-on-its-lines = { $courses } whole { $courses2 } ({ $length } on its lines)

# $too_short (text)
rules-no-whole-course-on-the = { $too_short } (no whole course on the lines)

# $too_short (text)
# $count (number)
rules-whole-courses-on-the-lines =
    { $count ->
        [one] { $too_short } ({ $count } whole course on the lines)
       *[other] { $too_short } ({ $count } whole courses on the lines)
    }

# $measured (text)
rules-is-left = { $measured } is left

rules-nothing-is-left = Nothing is left

# $left (text)
# $block_of (phrase)
# $face_of (phrase)
# $required (text)
rules-between-the-head-flashing-of = { $left } between the head flashing of { $block_of } and the ridge of { $face_of }; the book asks { $required }.

# $block_of (phrase)
# $near (text)
# $face_of (phrase)
# $required (text)
rules-the-base-rail-of-is = The base rail of { $block_of } is { $near } above the eave of { $face_of }; the kit asks { $required }.

# $block_of (phrase)
# $over (text)
# $face_of (phrase)
rules-the-base-rail-of-reaches = The base rail of { $block_of } reaches { $over } beyond the deck of { $face_of }. Move the block until there is deck under all of it.

# $over (text)
rules-beyond = { $over } beyond

rules-all-on-the-deck = all on the deck

# $block_of (phrase)
# $long (text)
# $required (text)
rules-the-base-rail-of-is-long = the base rail of { $block_of } is { $long } long without a break; the kit lets it be { $required }. Split the block, or leave a gap in the rail where the maker shows it.

# $what (text)
# $measured (text)
# $required (text)
rules-the-sheathing-the-kit-asks = The sheathing { $what } { $measured }; the kit asks { $required }. Ask the maker, or add to the deck before the array goes on.

# $too_short (text)
rules-thick = { $too_short } thick

rules-is = is
rules-is-of = is of
rules-or = {" "}or{" "}
rules-spans = spans

# $unknown (text)
rules-of-the-deck-the-job = Of the deck the job does not say { $unknown }: that was not checked.

rules-a-measurement-on-site = a measurement on site

# $modules (text)
# $count (number)
rules-hook =
    { $count ->
        [one] { $count } module hooks
       *[other] { $modules } hook
    }

# $row_of (text)
# $block_of (phrase)
# $hooks (text)
# $hooked (text)
# $required (text)
rules-in-row-of-into-the = In row { $row_of } of { $block_of } { $hooks } into the row below by { $hooked } of the lower edge at the least; the book asks { $required }.

# $hooked (text)
rules-of-the-lower-edge = { $hooked } of the lower edge

# $row_of (text)
# $block_of (phrase)
# $aside (text)
# $required (text)
rules-the-joints-of-row-of = The joints of row { $row_of } of { $block_of } are { $aside } aside of those below; the kit lays them { $required }.

# $aside (text)
rules-aside = { $aside } aside

rules-in-line = in line
rules-half-a-module-aside = half a module aside

# $length (text)
# $length2 (text)
rules-to = { $length } to { $length2 }

# $block_of (phrase)
# $above (text)
# $required (text)
rules-the-base-rail-of-is-above = The base rail of { $block_of } is { $above } above a course line; the kit allows { $required }.

# $above (text)
rules-above-a-course-line = { $above } above a course line

# $block_of (phrase)
# $measured (text)
# $allowed (text)
rules-the-reveal-of-is-the = The reveal of { $block_of } is { $measured }; the kit allows { $allowed }.

# $sentence (text)
# $near (text)
# $block (phrase)
# $required (text)
rules-is-from-the-kit-asks = { $sentence } is { $near } from { $block }; the kit asks { $required } for the flashing of both.

# $length (text)
rules-from-the-eave-to-inside = From the eave to { $length } inside the outer wall, where the place has ice along its eaves; give the overhang to have the length on the slope worked out.

# $names (text)
# $pitch (text)
# $length (text)
rules-on-where-the-place-has = On { $names } ({ $pitch }), where the place has ice along its eaves: { $length } up the slope from the eave.

rules-the-ridge-is-clear-for = The ridge is clear for the fire department
rules-fire-fighters-open-the-roof = Firefighters open the roof along the ridge to let heat and smoke out.
rules-two-pathways-lead-to-the = Two pathways lead to the ridge, on separate planes
rules-who-works-on-a-roof = Anyone who works on a roof needs a way up, and another way down.
rules-each-plane-with-modules-has = Each plane with modules has a pathway
rules-whoever-must-reach-the-array = Whoever must reach the array or the ridge above it needs a way up beside it.
rules-one-pathway-is-on-a = One pathway is on a street or driveway side
rules-a-ladder-is-raised-where = A ladder is raised where a fire engine can stand.
rules-a-hip-or-valley-between = A hip or valley between modules is clear
rules-a-hip-between-two-arrays = A hip between two arrays is a way up, and a valley a way along.
rules-the-roof-below-an-escape = The roof below an escape window is free
rules-who-climbs-out-of-a = Anyone who climbs out of a window, or comes to help, needs a way on the roof below it.

# $near (text)
rules-in-plan = { $near } in plan

# $required (text)
rules-at-least-in-plan = at least { $required } in plan

# $sentence (text)
# $near (text)
# $face_of (phrase)
# $share (text)
# $required (text)
rules-leaves-beside-the-ridge-of = { $sentence } leaves { $near } beside the ridge of { $face_of }, in plan; the array covers { $share } % of the plan roof area, for which the code asks { $required }.

# $sentence (text)
# $near (text)
# $the_kind (phrase)
# $face_of (phrase)
# $required (text)
rules-leaves-beside-the-of-in = { $sentence } leaves { $near } beside the { $the_kind } of { $face_of }, in plan, with modules on the other side too; the code asks { $required }.

# $sentence (text)
# $over (text)
# $penetration (text)
# $wide (text)
rules-lies-into-the-strip-below = { $sentence } lies { $over } into the strip below { $penetration }, which is kept free { $wide } wide down to the lower edge.

# $over (text)
rules-into-it = { $over } into it

# $wide (text)
rules-free-below-the-window = { $wide } free below the window

rules-no-ridge-to-go-to = no ridge to go to

# $width (text)
rules-each-wide-in-plan = 2, each { $width } wide in plan

# $found (text)
rules-found = { $found } found

rules-the-roof-as-drawn-has = {" "}The roof as drawn has no room for two, whatever is laid: draw its other planes, or ask the fire official.
rules-no-removal-of-modules-opens = {" "}No removal of modules opens them: ask the fire official.

# $found (text)
# $width (text)
# $none (text)
rules-of-2-pathways-of-lead = { $found } of 2 pathways of { $width } lead from the lowest edge to the ridge on separate planes.{ $none }

# $width (text)
rules-no-plane-of-this-roof = No plane of this roof has a ridge: the code asks for two pathways of { $width } from the lowest edge to the ridge and does not say what holds here. It is not judged: ask the fire official.

rules-no-removal-of-modules-along = {" "}No removal of modules along one strip opens it: leave room beside the array.

# $on (text)
# $found (text)
# $asked (text)
# $width (text)
# $none (text)
rules-has-of-pathways-of-from = { $on } has { $found } of { $asked } pathways of { $width } from its lowest edge to the ridge.{ $none }

# $asked (text)
# $width (text)
rules-wide-in-plan = { $asked }, { $width } wide in plan

# $on (text)
rules-has-no-ridge-and-no = { $on } has no ridge, and no plane beside it has one: the code asks for a pathway from the lowest edge to the ridge and does not say what holds here. It is not judged: ask the fire official.

# $width (text)
rules-a-pathway-wide-from-the = a pathway { $width } wide from the lowest edge to the ridge

# $ways (text)
rules-no-pathway-lies-on-the = No pathway lies on the street or driveway side ({ $ways }). Leave one on a plane that falls toward it, or along the edge of the roof on that side.

rules-none-on-that-side = none on that side
rules-one-on-that-side = one on that side

# $id (text)
rules-block = block { $id }

rules-a-block = a block

# $id (text)
rules-face = face { $id }

# $required (text)
rules-at-least = at least { $required }

# $required (text)
rules-at-most = at most { $required }

rules-eave = eave
rules-rake = rake
rules-ridge = ridge
rules-hip = hip
rules-valley = valley
rules-wall-line = wall line
rules-step = step
rules-pitch-change = pitch change
rules-every-part-of-the-house = Every part of the house carries a roof
rules-a-part-that-cant-be = A part that can't be raised has no faces: nothing on it is counted.
rules-geometry-no-roof-closes-over = geometry: no roof closes over this footprint
rules-outlines-of-faces-enclose-one = Outlines of faces enclose one area once
rules-lengths-areas-and-edges-of = Lengths, areas and edges of an outline that folds over itself mean nothing.
rules-geometry-such-an-outline-has = geometry: such an outline has no area
rules-faces-that-meet-in-plan = Faces that meet in plan meet in height
rules-a-roof-with-a-gap = A roof with a gap in it was measured or drawn wrong, and so are its ridges and areas.
rules-geometry-faces-of-one-roof = geometry: faces of one roof share their edges, within 10 mm
rules-edges-that-all-but-meet = Edges that all but meet, meet
rules-two-edges-a-hand-apart = Two edges a hand apart are counted as two, and the ridge or valley between them is lost.
rules-geometry-sides-beside-each-other = geometry: sides beside each other within 150 mm were meant to be one
rules-no-roof-is-counted-twice = No roof is counted twice
rules-where-two-faces-lie-over = Where two faces lie over the same ground, their area and their shingles are ordered twice.
rules-geometry-two-decks-cant-have = geometry: two decks can't have one place
rules-penetrations-lie-on-a-face = Penetrations lie on a face
rules-no-module-keeps-clear-of = No module keeps clear of what lies beside the roof: it was put in the wrong place, or a face is missing.
rules-geometry-it-is-measured-against = geometry: it is measured against nothing
rules-what-comes-through-comes-through = What comes through the roof comes through one plane
rules-a-boot-or-a-curb = A boot or a curb is flashed into one plane: over a hip, a ridge or a valley its flanges lie flat on neither side.

# $what (text)
# $length (text)
# $edge (text)
rules-reaches-over-set-it-clear = { $what } reaches { $length } over { $edge }. A boot or a curb is flashed into one plane: set it clear of the line.

# $what (text)
# $length (text)
# $edge (text)
rules-stands-over-by-hand = { $what } stands { $length } over { $edge }: it is flashed on each plane by itself.

# $length (text)
# $edge (text)
rules-over-the-edge = { $length } over { $edge }

rules-on-one-plane = on one plane
rules-what-was-decided-for-a = What was decided for a side still has that side
rules-a-kind-that-was-set = A kind that was set by hand, or a tape reading, belongs to one side of a face and never to another.
rules-geometry-the-outline-has-no = geometry: the outline has no such side any more

# $count (number)
rules-the-kinds-of-sides-that =
    { $count ->
        [one] the kind of a side that was set by hand
       *[other] the kinds of { $count } sides that were set by hand
    }

rules-what-the-tape-read = what the tape read

# $kinds (text)
# $tape (text)
rules-and = { $kinds }, and { $tape }

# $sentence (text)
# $lost (text)
rules-counts-for-nothing-since-the = { $sentence }: { $lost } no longer counts, since the outline has no such side any more. Set it again where it belongs.

rules-sides-that-are-gone = sides that are gone
rules-sides-of-the-outline = sides of the outline

# $part (text)
rules-part = Part “{ $part }”

# $id (text)
rules-part-2 = Part { $id }

rules-a-roof-over-all-of = a roof over all of its ground

# $name (text)
# $why (text)
rules-carries-no-roof-nothing-on = { $name } carries no roof: { $why }. Nothing on it is counted until then.

rules-no-roof = no roof

# $name (text)
rules-lies-under-other-parts-so = { $name } lies under other parts, so nothing of it is seen. Raise its eaves, or take it away.

rules-no-roof-that-is-seen = no roof that is seen

# $name (text)
rules-has-no-side-that-looks = { $name } has no side that looks up a slope, so no cricket stands there. Move it off the ridge, or do without a cricket.

rules-no-cricket = no cricket

# $corner (text)
# $ring_name (phrase)
rules-corner-of-is-at-no = corner { $corner } of { $ring_name } has no position within 100 km. Set it again

# $ring_name (text)
rules-has-less-than-three-corners = { $ring_name } has fewer than three corners. Draw the rest

# $corner (text)
# $ring_name (phrase)
rules-corner-of-lies-on-the = corner { $corner } of { $ring_name } lies on the one before it. Take one of the two away

# $ring_name (text)
rules-encloses-nothing-pull-its-corners = { $ring_name } encloses nothing. Pull its corners apart

rules-the-outline-folds-over-itself = the outline folds over itself. Move a corner so that no sides cross

# $ring_name (text)
rules-does-not-lie-inside-the = { $ring_name } does not lie inside the face. Move it in or take it away

rules-a-corner-at-no-place = a corner without a position
rules-too-few-corners = too few corners
rules-a-repeated-corner = a repeated corner
rules-no-area = no area
rules-folds-over = folds over
rules-a-hole-outside = a hole outside
rules-an-outline-that-encloses-one = an outline that encloses one area once
rules-the-gap-is-not-the = the gap is not the same all along, so no lift closes it: check the pitch, the way of fall and the eave heights.{" "}

# $sentence (text)
# $face (text)
# $apart (text)
# $uneven (text)
rules-does-not-meet-where-they = { $sentence } does not meet { $face }: where they share an edge it lies { $apart } lower. { $uneven }If the step is meant, decide the edge's kind.

# $apart (text)
rules-apart = { $apart } apart

# $length (text)
rules-within = within { $length }

# $face (phrase)
# $apart (text)
# $face2 (phrase)
rules-an-edge-of-runs-beside = An edge of { $face } runs { $apart } beside an edge of { $face2 } and does not meet it. Move the corners of one onto the other; if the gap is meant, waive this.

# $apart (text)
rules-apart-2 = { $apart } apart

rules-one-edge-or-two-that = one edge, or two that lie well apart

# $area (text)
# $face (text)
# $face2 (text)
rules-of-plan-lie-under-both = { $area } of plan lie under both { $face } and { $face2 }, and are counted twice. Pull one face back to where they meet.

rules-no-ground-under-two-faces = no ground under two faces

# $sentence (text)
rules-has-its-middle-on-no = { $sentence } has its middle on no sound face, so nothing keeps clear of it. Move it onto a face, or draw the face that it comes through.

rules-on-no-face = on no face
rules-on-a-face = on a face
rules-shingles-lie-on-slopes-that = Shingles lie on slopes that shed water
rules-lapped-shingles-let-water-in = Lapped shingles let water in where it stands or is blown back.
rules-low-slopes-have-a-double = Low slopes have a double underlayment
rules-water-runs-slowly-on-a = Water runs slowly on a low slope and finds its way under shingles.
rules-wide-penetrations-have-a-cricket = Wide penetrations have a cricket behind them
rules-water-and-snow-pile-up = Water and snow pile up behind what is wide, and find their way in.
rules-eaves-and-rakes-have-a = Eaves and rakes have a drip edge
rules-without-it-water-runs-back = Without it water runs back under the shingles and rots the edge of the deck.
rules-array-and-covering-have-the = Array and covering have the fire class that is required
rules-burning-brands-from-a-fire = Burning brands from a fire next door must not set the roof on fire.
rules-the-deck-is-sound-before = The deck is sound before an array goes on it
rules-screws-hold-only-in-firm = Screws hold only in firm wood, and nobody gets at the deck again for decades.

# $sentence (text)
# $measured (text)
# $required (text)
rules-is-asphalt-shingles-need-choose = { $sentence } is { $measured }; asphalt shingles need { $required }. Choose another roof covering there.

# $sentence (text)
# $measured (text)
# $pitch (text)
# $of_data (text)
rules-is-less-than-lay-its = { $sentence } is { $measured }, less than { $pitch }: lay its underlayment double. { $of_data }

rules-double-underlayment = double underlayment

# $sentence (text)
# $name (text)
# $wide (text)
# $required (text)
rules-is-wide-along-the-eave = { $sentence } “{ $name }” is { $wide } wide along the eave, more than { $required }: build a cricket or saddle on its ridge side, and keep the array out of it.

# $wide (text)
rules-wide = { $wide } wide

# $required (text)
rules-a-cricket-beyond = a cricket beyond { $required }

# $of_data (text)
rules-the-roof-has-no-drip = The roof has no drip edge at its eaves and rakes. { $of_data }

rules-a-drip-edge-at-eaves = a drip edge at eaves and rakes

# $asked (text)
rules-or-better = { $asked } or better

rules-the-array = the array
rules-the-covering-beyond-the-array = the covering beyond the array

# $within (text)
rules-an-edge-of-the-roof = an edge of the roof is less than { $within } from a lot line

rules-the-law-asks-for-it = the law asks for it here

# $sentence (text)
# $measured (text)
# $required (text)
# $why (text)
rules-has-against-fire-and-is = { $sentence } has { $measured } against fire, and { $required } is needed: { $why }.

rules-parts-of-the-deck-are = Parts of the deck are soft, split or wet: replace that sheathing before the membrane and the array go on.
rules-a-sound-deck = a sound deck

# $book (text)
rules-setbacks-each-with-its-own = { $book }: setbacks, each with its own source

# $book (text)
rules-clearances-each-with-its-own = { $book }: clearances, each with its own source

# $kit (text)
# $issue (text)
rules-issue = { $kit }, issue { $issue }

rules-geometry = geometry
rules-set-by-a-person-for = set by a person for this one
rules-common-practice-no-source = common practice, no source

# $figure (text)
rules-taken-as-roof-covering-a = { $figure }, taken as roof covering: a flush, flashed array is outside the reductions for panels above a roof (29.4.4)

rules-the-jobs-own-waivers = the job's own waivers
rules-not-asked-by-this-edition = not asked by this edition
rules-not-asked-by-this-book = not asked by this book

# $by (text)
# $date (text)
# $reason (text)
rules-waived-by-on = waived by { $by } on { $date }: { $reason }

# $by (text)
# $date (text)
# $reason (text)
rules-the-waiver-by-on = the waiver by { $by } on { $date } (“{ $reason }”)

# $by (text)
rules-was-given-before-numbers-were = { $by } was given before numbers were kept: look at it, and accept it again

# $by (text)
# $required (text)
# $required2 (text)
rules-was-given-where-was-asked = { $by } was given where { $required } was asked, and now it is { $required2 }: accept it again, or clear it

# $by (text)
# $measured (text)
# $measured2 (text)
rules-was-for-and-now-it = { $by } was for { $measured }, and now it is { $measured2 }: accept it again, or clear it

# $by (text)
# $date (text)
# $reason (text)
# $what (text)
rules-a-waiver-by-is-for = A waiver by { $by } ({ $date }) is for a finding that is no longer there ({ $what }): “{ $reason }”. Take it away, or keep it if the trouble may come back.

# $by (text)
# $date (text)
# $key (text)
# $reason (text)
rules-a-waiver-by-names-what = A waiver by { $by } ({ $date }) names what this program can't read, { $key }: “{ $reason }”. It covers nothing: take it away.

# $by (text)
# $date (text)
# $missing_words (text)
# $reason (text)
rules-a-waiver-by-names-which = A waiver by { $by } ({ $date }) names { $missing_words }, which the job no longer has: “{ $reason }”. It covers nothing and never will: take it away.

# $row (text)
# $block (phrase)
rules-row-of-block = row { $row } of { $block }

# $side (text)
# $face (phrase)
rules-side-of = side { $side } of { $face }

rules-no-such-finding = no such finding

# $id (text)
rules-part-3 = part { $id }

# $side (text)
# $face (text)
rules-side-of-face = side { $side } of face { $face }

# $id (text)
rules-penetration = penetration { $id }

# $rule_book (text)
rules-switched-off-in-the-rule = switched off in the rule book “{ $rule_book }”

# $no_roof_operations (text)
rules-exempt-the-fire-official-found = exempt: the fire official found no roof operations ({ $no_roof_operations })

# $integrated_listing_read_by (text)
rules-exempt-roof-integrated-array-its = exempt: roof-integrated array, its listing read by { $integrated_listing_read_by }; the exemption is in doubt

rules-exempt-a-detached-building-in = exempt: a detached building in which nobody lives
rules-this-edition-does-not-ask = this edition does not ask for it
rules-this-edition-has-no-number = this edition has no number for hips and valleys
rules-this-edition-asks-for-pathways = this edition asks for pathways on each slope with modules instead
rules-this-book-does-not-ask = this book does not ask for it
rules-the-kit-does-not-say = the kit does not say where its base rail may be
rules-the-kit-does-not-say-what = the kit does not say what deck it needs
rules-the-kit-asks-no-room = the kit asks no room between blocks
rules-the-kit-lets-rows-slide = the kit lets rows slide and the base rail lie anywhere
rules-no-escape-window-is-marked = no escape window is marked on the roof
rules-the-rule-book-has-no = the rule book has no setbacks
rules-the-rule-book-does-not = the rule book does not go into fire access
rules-the-rule-book-does-not-go = the rule book does not go into roofing
rules-the-rule-book-has-no-such = the rule book has no such limit
rules-the-rule-book-does-not-go-into = the rule book does not go into wind
rules-the-job-does-not-say = the job does not say what state the deck is in
rules-the-job-does-not-say-whether = the job does not say whether there is a drip edge
rules-the-job-does-not-say-which = the job does not say which fire class the law requires, nor how far the lot line is
rules-the-job-does-not-say-on = the job does not say on which side the street or driveway lies

# $names (text)
rules-the-job-does-not-say-2 = the job does not say: { $names }

rules-how-thick-the-sheathing-is-2 = how thick the sheathing is
rules-what-it-is-made-of = what it is made of
rules-how-far-apart-the-rafters = how far apart the rafters are
rules-what-state-the-deck-is-in = what state the deck is in
rules-whether-there-is-a-drip = whether there is a drip edge
rules-the-class-against-fire = the fire class
rules-where-the-street-lies = where the street lies
rules-basic-wind-speed = basic wind speed
rules-eave-height = eave height
rules-least-width-of-the-building = least width of the building
rules-what-a-fastener-holds = what a fastener holds
rules-deck-under-a-fastener = deck under a fastener
rules-fasteners-hold-against-wind-uplift = Fasteners hold against wind uplift (screening)
rules-a-corner-of-a-roof = A corner of a roof is lifted by several times its weight in a storm.

# $standard (text)
# $number (text)
# $other (text)
rules-figures-and-between-27-and = { $standard } figures { $number } and { $other }, between 27° and 45°

# $standard (text)
# $number (text)
rules-figure = { $standard } figure { $number }

# $degrees (text)
rules-a-slope-of-is-outside = a slope of { $degrees }° is outside the figures known here (more than 7° up to 45°): ask a licensed engineer

# $kind (text)
rules-the-figures-are-for-plain = the figures are for plain gable and hip roofs, and this one has a { $kind }: ask a licensed engineer

rules-hip-roof = hip roof
rules-gable-roof = gable roof

# $standard (text)
# $shape (text)
# $degrees (text)
rules-the-coefficients-of-for-a = the coefficients of { $standard } for a { $shape } of { $degrees }° are not among the sources of this program: ask a licensed engineer

rules-no-zone-of-the-figure = no zone of the figure reaches this block
rules-wind = Wind

# $standard (text)
# $height_ft (text)
# $q_kd_psf (text)
# $zone_width_ft (text)
# $square_feet (text)
rules-mean-roof-height-ft-qh = { $standard }: mean roof height { $height_ft } ft, qh·Kd { $q_kd_psf } psf, edge zones { $zone_width_ft } ft wide, effective wind area { $square_feet } ft²

rules-the-wind-is-not-worked = the wind is not worked out

# $screw (text)
# $pounds (text)
# $a_foot (text)
rules-lb-each-a-foot = { $screw }: { $pounds } lb each, { $a_foot } at each foot

# $what (text)
# $pounds (text)
rules-lb-a-foot-no-foot = { $what }: { $pounds } lb at each foot, and no foot holds more

# $what (text)
rules-the-listing-says-nothing-ask = { $what }: the listing says nothing, ask the maker before you rely on this

# $what (text)
# $pounds (text)
rules-lb-a-foot-which-helps = { $what }: { $pounds } lb at each foot, which helps but is not counted

# $what (text)
rules-the-listing-says-nothing-counted = { $what }: the listing says nothing, not counted

# $join (text)
rules-load-path-by-the-kits = Load path by the kit's listing: { $join }.

rules-the-kit-says-nothing-of = The kit does not say what holds its modules down: only the fastener that was typed in is counted.

# $sentence (text)
# $zone (text)
# $figure (text)
# $psf (text)
# $pounds (text)
# $holds (text)
# $path (text)
rules-reaches-zone-psf-outward-lb = { $sentence } reaches zone { $zone } ({ $figure }): { $psf } psf outward, { $pounds } lb on a fastener, which is said to hold { $holds } lb. Keep modules out of the edge zones, or set more fasteners: the order counts those that hold. { $path } Have it designed by a licensed engineer.

# $pounds (text)
rules-lb-a-fastener = { $pounds } lb a fastener

# $holds (text)
rules-at-most-lb = at most { $holds } lb

# $name (text)
# $why (text)
rules-is-not-screened-for-wind = { $name } is not screened for wind: { $why }.

rules-not-worked-out = not worked out
rules-a-case-that-the-sources = a case that the sources have

## Sheets

sheets-plan-to-build-from = Plan to build from
sheets-no-face-of-the-roof = No face of the roof is drawn yet.
sheets-crew-notes = Crew notes

# $face_heading (text)
# $pitch (text)
sheets-pitch = { $face_heading }, pitch { $pitch }

sheets-rows-of-modules = Rows of modules
sheets-base-line-up-from-the = Base line, up from the eave
sheets-left-end-along-that-line = Left end, along that line from the rake
sheets-in-this-order = In this order
sheets-stage = Stage
sheets-done-by = Done, by

# $row (text)
# $by (text)
sheets-row-begins-to-the-right = row { $row } begins { $by } to the right

# $row (text)
# $by (text)
sheets-row-begins-to-the-left = row { $row } begins { $by } to the left

# $cut (text)
# $whole (text)
# $lap (text)
sheets-above-then-the-shingles-lie = Above: { $cut }, then { $whole }; the shingles lie over { $lap } of the head flashing.

sheets-tick-what-is-whole-and = Check off what is there and whole. Write down what came, and what is damaged, before you sign for it.
sheets-counted-by-date = Counted by ………………………………    Date ………………………
sheets-delivery-what-is-short-damaged = Delivery: what is short, damaged or over

# $rows (text)
sheets-all-lines-are-complete = All { $rows } lines are complete.

# $open (text)
# $rows (text)
sheets-nothing-is-wrong-with-what = Nothing is wrong with what was counted; { $open } of { $rows } lines are not counted yet.

sheets-over = Over

# $waits_for (text)
sheets-cant-start = can't start: { $waits_for }

sheets-crew-checklist = Crew checklist

# $rule_book (text)
sheets-after-the-rule-book = After the rule book { $rule_book }

sheets-gone-through-by-date = Gone through by ………………………………    Date ………………………

# $text (text)
# $kind (text)
# $of (text)
sheets-from-the = { $text } from the { $kind }, { $of }

# $name (text)
# $falls (text)
sheets-falls = { $name }, falls { $falls }

# $job (text)
sheets-plan-north-up = { $job }, plan, north up

# $block (text)
sheets-base-line-of-block = base line of block { $block }

# $block (text)
sheets-block = Block { $block }

# $face (text)
sheets-true-size-eave-down = { $face }, true size, eave down

sheets-dash-with-three-dots-running = Dash with three dots, running on beside a block: the base line to snap.
sheets-thick-line = Thick line
sheets-thin-line = Thin line
sheets-long-dashes = Long dashes
sheets-dash-and-dot = Dash and dot
sheets-short-dashes = Short dashes
sheets-heavy-dots = Heavy dots
sheets-dash-with-two-short-ones = Dash with two short ones
sheets-light-dots = Light dots
sheets-the-letters-of-the-sheet = the sheet's font can't be read
sheets-a-page-cant-hold-its = a page has no room for its caution and anything else

# $value (text)
sheets-the-sheet-could-not-be = the sheet could not be written: { $value }

sheets-no-face-is-drawn-yet = no face is drawn yet
sheets-this-output-is-no-text = this output is not text: it is written to a file

# $value (text)
sheets-the-report-could-not-be = the report could not be written: { $value }

# $value (text)
sheets-the-workbook-could-not-be = the workbook could not be written: { $value }

# $job (text)
sheets-order-for = Order for { $job }

# $kit (text)
sheets-kit = Kit: { $kit }

# $rule_book (text)
sheets-rule-book = Rule book: { $rule_book }

# $prices (text)
# $currency (text)
sheets-prices-all-amounts-in = Prices: { $prices }; all amounts in { $currency }

sheets-why = Why
sheets-totals = Totals

# $unpriced (text)
sheets-no-price-and-not-in = NO PRICE, and not in the total: { $unpriced }

sheets-too-large = too large
sheets-no-price = NO PRICE
sheets-total = Total
sheets-total-of-the-parts-that = Total of the parts that have a price
sheets-amount = Amount
sheets-how-it-is-cut = How it is cut
sheets-crew = Crew
sheets-people = People
sheets-hours-of-work = Hours of work
sheets-hours-on-the-clock = Hours on the clock
sheets-one-more-finding-is-on = {" "}One more finding is on page 1.

# $more (number)
sheets-more-findings-are-on-page = {" "}{ $more ->
        [one] { $more } more finding is on
       *[other] { $more } more findings are on
    } page 1.

# $page (text)
# $of (text)
sheets-page-of = page { $page } of { $of }

sheets-to-know = To know
sheets-unit = Unit
sheets-waste = Waste
sheets-with-waste = With waste
sheets-from-stock = From stock
sheets-packages = Packages
sheets-holds = Holds
sheets-taxed = Taxed
sheets-changed-by-hand = Changed by hand
sheets-how-it-is-counted = How it is counted

# $known (text)
sheets-see = see "{ $known }"

sheets-l-a-rpage-p-of = &L&A&RPage &P of &N

# $prices (text)
# $date (text)
# $currency (text)
sheets-amounts-in-planning-aid-only = { $prices }, { $date }. Amounts in { $currency }. Planning aid only: see the last sheet.

sheets-cost-by-stage = Cost by stage
sheets-goods-and-labour = Goods and labor
sheets-job = Job
sheets-currency = Currency
sheets-not-ordered = Not ordered
sheets-about-the-count = About the count
sheets-finding = Finding
sheets-caution = Caution

## The wire diagram

diagram-title = Wire diagram

# $job (text)
diagram-title-of = { $job }, wire diagram

# $block (phrase)
# $face (phrase)
diagram-block-on = { $block } on { $face }, seen from the eave up the slope

# $block (phrase)
diagram-block-face-on = { $block }, face-on, with its wires

# $name (text)
diagram-string = string { $name }

# $name (text)
diagram-branch = branch { $name }

# $name (text)
diagram-closed-end = { $name }: cap

diagram-eave-side = eave
diagram-no-circuit = no circuit
diagram-box-not-stated = (box not stated)

# $name (text)
diagram-to-box = to { $name }

# $name (text)
# $far (text)
diagram-to-box-so-far = to { $name }, { $far }

# $module (text)
diagram-on-to = on to { $module }

# $module (text)
diagram-from = from { $module }

# $what (text)
# $module (text)
diagram-lead-of = { $what }, from { $module }

# $module (text)
# $circuit (text)
# $place (text)
diagram-module-in = { $module }: { $circuit }, place { $place }

diagram-no-lead-reaches = no lead reaches
diagram-bare-copper = bare copper
diagram-lug = lug
diagram-device = device, or box of the module
diagram-extension-lead = extension lead
diagram-cap = end with its cap
diagram-junction-box = junction box
diagram-legend = Legend
diagram-how-to-read = Modules are numbered by row and place in it, the lowest row and the left first: 2-3 is the third module of the second row. Below at the right stands its circuit and when it is plugged: 1·5 is the fifth of circuit 1. Arrows point in the order of plugging. Lines show what is joined to what, not where a lead is clipped; bare copper passes each lug once, without a splice.

# $modules (text)
diagram-in-no-circuit = In no circuit: { $modules }. Their leads stay live.

# $circuit (text)
# $modules (text)
diagram-not-there = { $circuit } names modules that are not there: { $modules }

diagram-order-of-plugging = In the order of plugging
diagram-circuit = Circuit
diagram-modules = Modules
diagram-from-module-to-module = From module to module, with extension leads
diagram-where-wires-go = Where the wires go
diagram-wire = Wire
diagram-from-module = From
diagram-to-box-2 = To box
diagram-how-far = How far
diagram-not-stated = not stated
diagram-not-known = not known

# $block (phrase)
diagram-copper-of = Bare copper, { $block }

# $count (number)
# $along (text)
diagram-past-lugs =
    { $count ->
        [one] { $along } past one lug, then from the head
       *[other] { $along } past { $count } lugs, then from the head
    }

## The handover sheet for the electrician

handover-title = Handover to the electrician
handover-live-dc = The array is live whenever light falls on it. No switch, breaker or shutdown makes a module's own leads dead; strings of bare modules have their full voltage at the box.
handover-never-under-load = Never part or mate dc plugs under load: open the dc disconnect first, and prove with a clamp meter that no current flows. A dc arc does not go out by itself.
handover-meter-first = Work as on live parts: insulated gloves and tools, a meter rated for the highest voltage and proved before and after on a known source, one person beside who can help.
handover-no-insulation-test = Never test insulation with electronics connected (devices at modules, inverter, surge arresters) unless their maker allows it: it destroys them. Only bare modules are tested by the voltage below; else the maker says how.
handover-what-a-meter-shows = What a meter should show
handover-bare-by-temperature = Open circuit, in volts, by the temperature of the modules measured at their backs, in the middle of the string; below each value, what passes (5 % to each side: common practice, IEC 62446-1 in spirit, from memory). One module less, or one plugged the wrong way round, falls out of it.
handover-standby-volts = Each string open, before anything switches its devices on: each device gives its standby voltage, whatever the light and the temperature (by their maker's data; half a device to each side: common practice, no source). One device that is missing or dead shows as one standby voltage less. Much more than this: the devices are on, or bypassed; stop.
handover-ac-volts = At the branch's breaker with the grid on: the voltage of the grid. What passes is 5 % to each side of the rated voltage (ANSI C84.1, range A, from memory). With the breaker off, the branch shows nothing.
handover-volts-dc = V dc
handover-volts-ac = V ac
handover-passes-from-to = Passes from–to
handover-measured = Measured
handover-by-the-maker = as the maker says
handover-polarity-right = + is +
handover-open-volts = V open
handover-at-celsius = at °C
handover-amps = A in sun
handover-insulation-test = Insulation tested at
handover-plus-to-ground = + to ground, MΩ
handover-minus-to-ground = − to ground, MΩ
handover-how-to-measure = Polarity before anything is closed. Volts of each string alone, parallel ones apart. Insulation at least 1 MΩ (common practice, from memory). Then: shutdown tried, labels stuck, readings typed back into the job.
handover-test-voltage = Insulation is tested at 500 V up to 1.25 times the open voltage of the string at 25 °C, above that at 1,000 V (common practice, from memory).
handover-bonding = Bonding, from the box
handover-lugs = Lugs
handover-ohms = Measured, Ω
handover-continuity = Continuity from the box to the frame farthest from it, in each block: the conductor is one piece, and taking one module out must not open it.
handover-read-back = Read and typed back
handover-read = V read
handover-expected = V expected
handover-verdict = Volts
handover-passes = pass
handover-out-of-band = OUT OF BAND
handover-polarity = Polarity
handover-right = right
handover-wrong = WRONG
handover-insulation = Insulation, MΩ
handover-torques = Torques
handover-no-torques = The kit states no torques: take them from the makers' data sheets, and write them here: ………………………………………………
handover-torque = Torque
handover-set-by = Set by
handover-labels = Labels to stick on, and where
handover-signed = Measured by ………………………………    License no. ………………………    Date ………………………

## Labels to stick on

labels-title = Labels
labels-texts-are-english = Texts are those that the code gives or asks for, in English as inspectors read them; a job may have its own. What stands in brackets is drawn or written in by hand. An inspector has the last word.
labels-print-at-full-size = Print at 100 %, on material that lasts outdoors (NEC 110.21(B), from memory: durable, not written by hand). Large letters are then as high as the list says: measure one before you stick it on.
labels-label = Label
labels-where = Where it goes
labels-by = By
labels-letters = Letters
labels-how-many = How many

# $large (text)
# $small (text)
# $colours (text)
labels-letters-so-high = { $large }, below { $small }; { $colours }

labels-white-on-red = white on red
labels-white-on-red-reflecting = white on red, reflecting
labels-black-on-orange = black on orange
labels-black-on-yellow = black on yellow
labels-own-text = text of this job
labels-at-system-disconnect = at the disconnect of the whole system
labels-at-dc-disconnect = at the dc disconnect
labels-at-dc-raceway = on raceways, boxes and fittings with dc circuits: every 10 ft, and beside each wall, floor and box that they enter
labels-at-shutdown-switch = at the switch that starts the shutdown, or within 3 ft of it
labels-at-connection = at the point of connection
labels-at-connection-breaker = at the breaker of the output, where it stands at the end of the bus opposite to the main
labels-at-service = at the service equipment

## The one-line diagram

oneline-title = One-line diagram

# $job (text)
oneline-title-of = { $job }, one-line diagram

oneline-how-to-read = Solid lines: current-carrying conductors; dashed: equipment grounding conductors. The numbers on them are those of the table. Amperes are the largest current and, behind the stroke, what conductors and overcurrent devices are chosen by. What stands as "at least" is worked out from the tables of the code for the terminals that the kit states, else for 60 °C; a licensed person chooses.
oneline-array = Modules
oneline-junction-box = Junction box
oneline-dc-disconnect = Dc disconnect
oneline-inverter = Inverter
oneline-panel = Combined panel
oneline-ac-disconnect = Ac disconnect
oneline-service-panel = Service panel
oneline-meter = Meter
oneline-utility = utility
oneline-earth = earth

# $count (number)
# $part (text)
# $watts (text)
oneline-modules-of =
    { $count ->
        [one] { $count } module { $part }, { $watts } W
       *[other] { $count } modules { $part }, { $watts } W
    }

oneline-no-devices = no device at the modules

# $volts (text)
# $amps (text)
oneline-dc-device = dc device at each, at most { $volts } V, { $amps } A

# $volts (text)
# $amps (text)
oneline-ac-device = ac device at each, { $volts } V, { $amps } A

# $count (number)
# $sizes (text)
oneline-strings-of =
    { $count ->
        [one] { $count } string of { $sizes }
       *[other] { $count } strings of { $sizes }
    }

# $count (number)
# $sizes (text)
oneline-branches-of =
    { $count ->
        [one] { $count } branch of { $sizes }
       *[other] { $count } branches of { $sizes }
    }

# $volts (text)
# $amps (text)
oneline-each-at-most = each at most { $volts } V, { $amps } A

# $amps (text)
oneline-each-amps = each at most { $amps } A

# $count (number)
oneline-boxes =
    { $count ->
        [one] { $count } box
       *[other] { $count } boxes
    }

oneline-on-the-roof = on the roof, flashed
oneline-under-the-deck = under the deck
oneline-no-shutdown = shutdown at the modules: not provided
oneline-shutdown-at-modules = shutdown at the modules, by their devices
oneline-arc-fault = arc-fault protection
oneline-arc-fault-in-inverter = arc-fault protection in the inverter

# $count (number)
oneline-inputs =
    { $count ->
        [one] { $count } input
       *[other] { $count } inputs
    }

oneline-strings-without-input = strings that are led to no input yet

# $count (number)
# $amps (text)
oneline-breakers =
    { $count ->
        [one] breaker, { $amps } A
       *[other] { $count } breakers, { $amps } A
    }

# $bus (text)
# $main (text)
oneline-bus-and-main = bus { $bus } A, main { $main } A

# $amps (text)
oneline-output-that-fits = output that fits: { $amps } A

oneline-from-to = From – to
oneline-conductors = Conductors
oneline-ground = Grounding
oneline-lies-in = Lies in
oneline-length = Length
oneline-amps = A
oneline-device = Breaker, fuse
oneline-drop = Drop
oneline-none = none

# $awg (text)
oneline-bare-copper = { $awg } AWG bare copper

# $awg (text)
oneline-at-least = at least { $awg } AWG

# $length (text)
oneline-up-to = up to { $length }

oneline-free-air = free air, under the array
oneline-see-below = in the next line
oneline-way-opposite-ends = at the end of the bus opposite to the main (120 %)
oneline-way-whole-bus = anywhere on the bus (100 %)
oneline-way-sum = by the sum of all breakers
oneline-way-centre-fed = on a panel fed in the middle (120 %)
oneline-way-feeder = on a feeder
oneline-way-supply-side = ahead of the main
oneline-leg-free-air = free air
oneline-leg-roof = roof
oneline-leg-attic = attic
oneline-leg-wall = wall


## The start page

start-go-on-with-the-last = Go on with the last job
start-jobs-that-were-open = Jobs that were open lately
start-new-roof = Begin
start-not-there-any-more = not there any more
start-try-a-finished-roof = Try a finished roof
start-what-do-you-want = What do you want to do?

## The house in space and the sun

solid-house = House
solid-drag-to-turn-the-house = Drag to turn the house, with Shift to slide it; the wheel moves nearer. A click selects what is there.
solid-the-house-in-space-drag = The house in space: drag to turn, wheel to come nearer
solid-save-picture = Save picture…
solid-the-picture-could-not-be = The picture could not be written
solid-show-to-the-homeowner = Show to the homeowner
solid-there-is-no-house-to = There is no house to show yet: draw a face of the roof first.
solid-where-the-house-stands-is = Where the house stands is not known, so the light is even. Write its place under The job, The house.
solid-turn-left = Turn left
solid-turn-right = Turn right
solid-higher = Higher
solid-lower = Lower
solid-nearer = Nearer
solid-farther = Farther
solid-before = Before
solid-after = After
solid-the-house-without-the-array = The house without the array, and with it
solid-day = Day
solid-the-day-that-the-sun = The day that the sun is shown for
solid-hour = Hour
solid-by-the-clock-15-30 = By the clock, 15:30; in summer set UTC to summer time
solid-utc = UTC
solid-how-many-hours-the-clock = How many hours the clock is ahead of UTC: −5 for New York in winter, −4 in summer
solid-house-turn = House: turn
solid-arrow-keys-or-drag = Arrow keys or drag
solid-house-slide-come-nearer = House: slide, come nearer
solid-shift-arrow-keys-and = Shift + arrow keys, + and −
solid-from-above = From above
solid-leave-esc = Leave  (Esc)
solid-what-it-covers = What it covers
solid-what-it-costs = What it costs
solid-to-be-quoted = To be quoted
solid-as-planned-today-the-written = As planned today; the written quote counts. What it yields and saves is not worked out here.
solid-not-ready-to-build-these = Not ready to build: these findings are open
solid-waived-accepted-all-the-same = Waived: accepted all the same
solid-bare-cost-no-overhead-and = Bare cost: no overhead and no profit is in it. Both are set beside the order, under “Roof, money, stock”.
solid-show-the-bare-cost-all = Show the bare cost all the same
solid-good-to-know = Good to know
solid-this-is-a-plan-not = This is a plan, not a quote and not a permit. The layout is confirmed on your roof and by the local building office.
solid-a-licensed-engineer-looks-at = A licensed engineer looks at the structure where that is required; a licensed electrician connects the array.
solid-please-stay-off-the-roof = Please stay off the roof. Modules are live whenever light falls on them.
solid-full-screen-in-large-type = Full screen, in large type, without what is only for the office
solid-write-the-picture-as-it = Write the picture as you see it to a PNG file

# $from (text)
solid-seen-from-the = Seen from the { $from }

solid-from-above-2 = from above
solid-from-high-up = from high up
solid-from-a-little-above = from a little above
solid-from-the-ground = from the ground
solid-without-the-array = without the array
solid-no-modules-on-it = no modules on it

# $from (text)
# $high (text)
# $array (text)
# $sun (text)
solid-roof-seen-from-the = Roof seen from the { $from }, { $high }, { $array }. { $sun }

# $count (text)
# $face (text)
solid-on = { $count } on { $face }

# $counts (text)
solid-modules = modules: { $counts }

# $plan (number)
# $faces (number)
solid-modules-on-faces = { $plan ->
        [one] { $plan } module on
       *[other] { $plan } modules on
    } { $faces ->
        [one] { $faces } face
       *[other] { $faces } faces
    }

# $job (number)
# $with_modules_or_none (text)
solid-this-machine-cant-draw-the = This machine can't draw the house at the moment. It has { $job ->
        [one] { $job } face and
       *[other] { $job } faces and
    } { $with_modules_or_none }; the plan and the view of one face show them.

solid-no-modules = no modules
solid-january = January
solid-february = February
solid-march = March
solid-april = April
solid-may = May
solid-june = June
solid-july = July
solid-august = August
solid-september = September
solid-october = October
solid-november = November
solid-december = December

# $day (text)
# $month (text)
solid-day-month = { $day } { $month }

# $when (text)
# $azimuth (text)
# $elevation (text)
solid-sun-in-the-high = { $when }: sun in the { $azimuth }, { $elevation }° high.

# $when (text)
solid-the-sun-is-down = { $when }: the sun is down.

# $clock (text)
# $clock2 (text)
# $clock3 (text)
solid-sunrise-highest-sunset = Sunrise { $clock }, highest { $clock2 }, sunset { $clock3 }

# $clock (text)
solid-the-sun-stays-up-all = The sun stays up all day; highest { $clock }

# $clock (text)
solid-the-sun-stays-down-all = The sun stays down all day; nearest to rising { $clock }

# $side (text)
# $side2 (text)
solid-at = At { $side }, { $side2 }

solid-sq-ft = sq ft
solid-rated-power = rated power
solid-covered-by-the-array = covered by the array
solid-of-the-roof = of the roof

# $latitude (text)
# $longitude (text)
solid-latitude-longitude-degrees-from-90 = latitude { $latitude }, longitude { $longitude }: give degrees from -90 to 90 and from -180 to 180

# $value (text)
solid-is-no-day-that-the = { $value } is not a day that the sun's position is known for: years -2000 to 6000

# $value (text)
solid-the-suns-place-cant-be = the sun's position can't be worked out: { $value }

solid-no-noon-on-this-day = no noon on this day

## Where the job stands

standing-not-to-build = NOT TO BUILD
standing-waived = WAIVED

# $not (text)
# $count (number)
standing-findings-stop-this-job =
    { $count ->
        [one] { $not }: { $count } finding stops this job.{"\u000A"}
       *[other] { $not }: { $count } findings stop this job.{"\u000A"}
    }

# $message (text)
# $by (text)
# $date (text)
# $reason (text)
standing-waived-by-on = { $message } Waived by { $by } on { $date }: { $reason }

## The takeoff

# $currency (text)
# $currency2 (text)
takeoff-one-order-is-in-the = one order is in { $currency }, the other in { $currency2 }

takeoff-more = More
takeoff-less = Less
takeoff-as-many-packages-another-need = As many packages, another need or price

# $plain (text)
# $plain2 (text)
# $need_words (text)
# $need_words2 (text)
# $packages (text)
# $plain3 (text)
# $more (text)
takeoff-need-order = {"  "}{ $plain }  { $plain2 }  need { $need_words } → { $need_words2 }, order { $packages } → { $plain3 }  { $more }

# $plain (text)
takeoff-totals-cant-be-compared = Totals can't be compared: { $plain }

# $before (text)
# $after (text)
# $currency (text)
# $more (text)
takeoff-total-before-and-after = Total: { $before } → { $after } { $currency }, { $more }

takeoff-planning-aid-only-confirm-against = Planning aid only. Confirm against the codes adopted locally, the product listing and the maker's instructions. Structural design belongs to a licensed engineer and electrical work to a qualified, licensed electrician where that is required. Falls and dc shock or arc can kill: count and order on the ground, and treat every module as live whenever light falls on it.

# $value (text)
takeoff-the-order-could-not-be = the order could not be written as CSV: { $value }

# $value (text)
takeoff-the-order-could-not-be-written = the order could not be written as JSON: { $value }

takeoff-put-on-the-order-by = put on the order by hand

# $part (text)
# $part2 (text)
# $places (text)
takeoff-longer-than-any-stick-and = { $part }, { $part2 }: longer than any stick, and the kit allows no splice: { $places }. It is counted as if it were spliced; order a longer stick or ask the maker.

takeoff-the-overhang-of-the-eaves = The overhang of the eaves is not known: the leak barrier is counted as if the wall stood under the edge of the roof. Give the overhang, and the barrier reaches that much farther up.
takeoff-the-price-list-does-not = The price list does not say what sales tax is: none is in the total.
takeoff-the-price-list-does-not-say = The price list does not say what delivery costs: none is in the total.

# $left (text)
takeoff-stock-in-hand-the-kit = Stock on hand: the kit has no part { $left }.

# $part (text)
# $amount (text)
takeoff-stock-in-hand-is-not = Stock on hand: { $part } is not counted in the unit that the warehouse list gives, { $amount }: it is left out.

# $a_foot (text)
# $zone (text)
# $modules (text)
# $name (text)
takeoff-wind-a-screening-fasteners-a = Wind, a screening: { $a_foot } fasteners at each foot in zone { $zone } on { $modules } of the modules of block { $name }. Those beyond the kit's own are on the order. The findings give the load path, part by part. Have it designed by a licensed engineer.

takeoff-left-head-corner = left head corner
takeoff-right-head-corner = right head corner
takeoff-left-base-corner = left base corner
takeoff-right-base-corner = right base corner
takeoff-bonding-path = bonding path
takeoff-wall-line-up-the-slope = wall line up the slope
takeoff-wall-line-across-the-slope = wall line across the slope
takeoff-wall-at-the-end-of = wall at the end of an eave
takeoff-cricket = cricket

# $row (text)
# $column (text)
takeoff-row-column = row { $row }, column { $column }

takeoff-the-block = the block

# $row (text)
takeoff-row = row { $row }

# $row (text)
# $seam (text)
takeoff-row-seam = row { $row }, seam { $seam }

# $row (text)
takeoff-base-rail-of-row = base rail of row { $row }

# $row (text)
takeoff-left-side-from-row-up = left side from row { $row } up

# $row (text)
takeoff-right-side-from-row-up = right side from row { $row } up

# $row (text)
takeoff-head-of-row = head of row { $row }

# $row (text)
takeoff-head-of-row-left-end = head of row { $row }, left end

# $row (text)
takeoff-head-of-row-right-end = head of row { $row }, right end

takeoff-under-the-array = under the array
takeoff-around-the-array = around the array
takeoff-under-and-around-the-array = under and around the array
takeoff-along-the-eave = along the eave
takeoff-left-side = left side
takeoff-right-side = right side
takeoff-lower-side = lower side
takeoff-upper-side = upper side
takeoff-deck-around-it = deck around it
takeoff-not-counted = not counted
takeoff-short = short
takeoff-over = over
takeoff-damaged = damaged
takeoff-complete = complete

# $row (text)
# $number (text)
takeoff-as-2 = { $row } (as { $number })

takeoff-not-on-the-order = not on the order

# $row (text)
# $row2 (text)
takeoff-not-counted-2 = { $row } { $row2 }: not counted

# $row (text)
# $row2 (text)
# $good (text)
# $needed (text)
takeoff-of = { $row } { $row2 }: { $good } of { $needed }

# $on (text)
takeoff-cant-start = { $on } can't start

# $plain (text)
takeoff-delivery-for = Delivery for { $plain }

takeoff-over-or-not-ordered = Over, or not ordered

# $plain (text)
# $plain2 (text)
# $packages (text)
# $ordered (text)
# $counted (text)
# $plain3 (text)
takeoff-of-ordered-came = {"  "}{ $plain }  { $plain2 }: { $packages } of { $ordered } ordered, { $counted } came{ $plain3 }

# $open (text)
# $rows (text)
takeoff-not-counted-yet-of-lines =
    {""}
    Not counted yet: { $open } of { $rows } lines.

# $rows (text)
takeoff-all-lines-are-complete =
    {""}
    All { $rows } lines are complete.

takeoff-what-can-start =
    {""}
    What can start

# $stage (text)
takeoff-can-start = {"  "}{ $stage }: can start

# $stage (text)
# $why (text)
takeoff-cant-start-2 = {"  "}{ $stage }: can't start: { $why }

# $currencies (text)
takeoff-the-lists-are-in = the lists are in { $currencies }

# $show_money (text)
# $known (text)
# $known2 (text)
# $show_money2 (text)
# $plain (text)
# $show_money3 (text)
takeoff-lines-sales-tax-delivery-total = {"  "}lines { $show_money }, sales tax { $known }, delivery { $known2 }, total { $show_money2 } { $plain }; what every list has: { $show_money3 }

# $missing (text)
takeoff-no-price-and-not-in = {"  "}NO PRICE, and not in the total: { $missing }

# $plain (text)
takeoff-amounts-cant-be-compared = Amounts can't be compared: { $plain }

# $show_money (text)
takeoff-the-cheapest-each-line-where = {"*"} the cheapest. Each line where it is cheapest: { $show_money }

# $plain (text)
takeoff-order-for = Order for { $plain }

# $plain (text)
takeoff-waste = {"      "}waste: { $plain }

# $plain (text)
takeoff-source = {"      "}source: { $plain }

# $total (text)
takeoff-total = Total: { $total }

# $total (text)
takeoff-total-of-the-parts-that = Total of the parts that have a price: { $total }

# $missing (text)
takeoff-no-price-and-not-in-the = NO PRICE, and not in the total: { $missing }

takeoff-goods = Goods
takeoff-between-thousands = ,
takeoff-decimal-mark = .
takeoff-sales-tax = Sales tax
takeoff-overhead = Overhead

# $plain (text)
# $plain2 (text)
# $need_words (text)
# $plain3 (text)
takeoff-need-order-2 = {"  "}{ $plain }  { $plain2 }  need { $need_words }  order { $plain3 }

# $price (text)
# $cost (text)
# $plain (text)
takeoff-at = {"  "}at { $price } = { $cost } { $plain }

# $price (text)
takeoff-at-too-many-to-reckon = {"  "}at { $price }: too many to work out a cost

takeoff-no-price = {"  "}NO PRICE

# $need (text)
# $waste (text)
# $with (text)
takeoff-with-waste = { $need }, with { $waste } % waste { $with }

# $crew (text)
# $person_hours (text)
# $people (text)
# $hours (text)
takeoff-h-of-work-h-on = {"  "}{ $crew }: { $person_hours } h of work, { $people }, { $hours } h on the clock

# $left (text)
takeoff-left = , { $left } left

# $sticks (text)
# $length (text)
# $of_part (text)
# $pieces (text)
# $left (text)
takeoff-of-2 = { $sticks } of { $length }{ $of_part }: { $pieces }{ $left }

# $packages (text)
# $show_amount (text)
takeoff-of-3 = { $packages } of { $show_amount }

# $bought (text)
takeoff-bought-the-least-for-these = { $bought } bought, the least for these joints (proved)

# $bought (text)
# $more (text)
takeoff-bought-at-most-more-than = { $bought } bought, at most { $more } more than the least for these joints

# $counted (text)
# $because (text)
takeoff-overridden-counted = OVERRIDDEN, counted { $counted }{ $because }

# $because (text)
takeoff-added-by-hand = ADDED by hand{ $because }

# $because (text)
takeoff-off = OFF{ $because }

# $show_amount (text)
takeoff-of-the-offices-own-to = { $show_amount } of the office's own, to bring along

# $show_amount (text)
takeoff-from-stock-in-hand = { $show_amount } from stock on hand

# $number (text)
# $name (text)
takeoff-alternate = alternate { $number }, { $name }

takeoff-as-chosen = as chosen
takeoff-as-drawn = as drawn

# $waste (text)
# $kind (text)
# $by (text)
takeoff-for-a = { $waste } % for a { $kind }, { $by }

# $waste (text)
takeoff-the-offices-own = { $waste } %, the office's own

# $waste (text)
# $why (text)
takeoff-the-offices-own-2 = { $waste } %, the office's own: { $why }

# $percent (text)
takeoff-the-cuts-of-these-faces = the cuts of these faces alone make { $percent } %, which is not ordered by

# $waste (text)
# $cuts (text)
takeoff-waste-cuts = { $waste } %; { $cuts }

# $measured (text)
# $noun (text)
takeoff-of-4 = { $measured } of { $noun }

# $measured (text)
# $way (text)
takeoff-each = { $measured }: { $way } each

# $measured (text)
# $length (text)
takeoff-pieces-of-end-to-end = { $measured }: pieces of { $length } end to end

# $measured (text)
# $length (text)
# $lap (text)
takeoff-pieces-of-each-lapping = { $measured }: pieces of { $length }, each lapping { $lap }

# $measured (text)
# $way (text)
takeoff-one-every-both-ways = { $measured }: one every { $way } both ways

# $measured (text)
# $way (text)
takeoff-one-every-and-one-at = { $measured }: one every { $way } and one at each run's end

# $measured (text)
# $take (text)
takeoff-for-each = { $measured }: { $take } for each

# $measured (text)
# $take (text)
# $of (text)
takeoff-for-each-2 = { $measured }: { $take } for each { $of }

# $measured (text)
# $width (text)
takeoff-a-strip-wide = { $measured }: a strip { $width } wide

# $lap (text)
takeoff-each-lapping = , each lapping { $lap }

# $measured (text)
# $lengths (text)
# $lap (text)
# $proof (text)
takeoff-cut-from-sticks-of = { $measured }: cut from sticks of { $lengths }{ $lap }; { $proof }

takeoff-double = , double

# $measured (text)
# $many (text)
# $width (text)
# $side_lap (text)
# $double (text)
# $end_lap (text)
# $many2 (text)
takeoff-laid-in-wide-lapping-at = { $measured }: laid in { $many } { $width } wide lapping { $side_lap }{ $double }, { $end_lap } at ends; { $many2 } begun

## Things that are counted

# $count (number)
things-module =
    { $count ->
        [one] { $count } module
       *[other] { $count } modules
    }

# $count (number)
things-block =
    { $count ->
        [one] { $count } block
       *[other] { $count } blocks
    }

# $count (number)
things-row =
    { $count ->
        [one] { $count } row
       *[other] { $count } rows
    }

# $count (number)
things-seam =
    { $count ->
        [one] { $count } seam
       *[other] { $count } seams
    }

# $count (number)
things-run-of-base-rail =
    { $count ->
        [one] { $count } run of base rail
       *[other] { $count } runs of base rail
    }

# $count (number)
things-side =
    { $count ->
        [one] { $count } side
       *[other] { $count } sides
    }

# $count (number)
things-course-up-the-sides-one =
    { $count ->
        [one] { $count } course up the sides, one more a side
       *[other] { $count } courses up the sides, one more a side
    }

# $count (number)
things-run-of-head-flashing =
    { $count ->
        [one] { $count } run of head flashing
       *[other] { $count } runs of head flashing
    }

# $count (number)
things-module-under-the-head =
    { $count ->
        [one] { $count } module under the head
       *[other] { $count } modules under the head
    }

# $count (number)
things-head-end-and-seam =
    { $count ->
        [one] { $count } head end and seam
       *[other] { $count } head ends and seams
    }

# $count (number)
things-left-head-corner =
    { $count ->
        [one] { $count } left head corner
       *[other] { $count } left head corners
    }

# $count (number)
things-right-head-corner =
    { $count ->
        [one] { $count } right head corner
       *[other] { $count } right head corners
    }

# $count (number)
things-inside-corner =
    { $count ->
        [one] { $count } inside corner
       *[other] { $count } inside corners
    }

# $count (number)
things-left-base-corner =
    { $count ->
        [one] { $count } left base corner
       *[other] { $count } left base corners
    }

# $count (number)
things-right-base-corner =
    { $count ->
        [one] { $count } right base corner
       *[other] { $count } right base corners
    }

# $count (number)
things-area-under-the-array =
    { $count ->
        [one] { $count } area under the array
       *[other] { $count } areas under the array
    }

# $count (number)
things-strip-around-the-array =
    { $count ->
        [one] { $count } strip around the array
       *[other] { $count } strips around the array
    }

# $count (number)
things-array-with-the-strip-around =
    { $count ->
        [one] { $count } array with the strip around it
       *[other] { $count } arrays with the strip around them
    }

# $count (number)
things-bonding-path =
    { $count ->
        [one] { $count } bonding path
       *[other] { $count } bonding paths
    }
# $count (number)
things-circuit =
    { $count ->
        [one] { $count } circuit
       *[other] { $count } circuits
    }

# $count (number)
things-extension-lead =
    { $count ->
        [one] { $count } link with extension leads
       *[other] { $count } links with extension leads
    }

# $count (number)
things-home-run-positive =
    { $count ->
        [one] { $count } home run of a + end
       *[other] { $count } home runs of + ends
    }

# $count (number)
things-home-run-negative =
    { $count ->
        [one] { $count } home run of a − end
       *[other] { $count } home runs of − ends
    }

# $count (number)
things-home-run-branch =
    { $count ->
        [one] { $count } home run of a branch
       *[other] { $count } home runs of branches
    }

# $count (number)
things-ground-to-box =
    { $count ->
        [one] { $count } way of the bare copper to a box
       *[other] { $count } ways of the bare copper to a box
    }

# $count (number)
things-home-run-end =
    { $count ->
        [one] { $count } end of a home run at the array
       *[other] { $count } ends of home runs at the array
    }

# $count (number)
things-box-on-roof =
    { $count ->
        [one] { $count } junction box on the roof
       *[other] { $count } junction boxes on the roof
    }

# $count (number)
things-box-under-deck =
    { $count ->
        [one] { $count } junction box under the deck
       *[other] { $count } junction boxes under the deck
    }

# $count (number)
things-inverter =
    { $count ->
        [one] { $count } inverter of this kind
       *[other] { $count } inverters of this kind
    }

# $count (number)
things-extra-fastener-for-wind =
    { $count ->
        [one] { $count } extra fastener for wind
       *[other] { $count } extra fasteners for wind
    }

# $count (number)
things-stick-of-this-length-in =
    { $count ->
        [one] { $count } stick of this length in the cut list
       *[other] { $count } sticks of this length in the cut list
    }

# $count (number)
things-joint-between-two-pieces =
    { $count ->
        [one] { $count } joint between two pieces
       *[other] { $count } joints between two pieces
    }

# $count (number)
things-job =
    { $count ->
        [one] { $count } job
       *[other] { $count } jobs
    }

# $count (number)
things-person =
    { $count ->
        [one] { $count } person
       *[other] { $count } people
    }

# $count (number)
things-person-on-the-roof =
    { $count ->
        [one] { $count } person on the roof
       *[other] { $count } people on the roof
    }

# $count (number)
things-face-of-deck =
    { $count ->
        [one] { $count } face of deck
       *[other] { $count } faces of deck
    }

# $count (number)
things-face-of-old-roofing-each =
    { $count ->
        [one] { $count } face of old roofing, each layer counted
       *[other] { $count } faces of old roofing, each layer counted
    }

# $count (number)
things-face-of-deck-less-the =
    { $count ->
        [one] { $count } face of deck less the array
       *[other] { $count } faces of deck less the array
    }

# $count (number)
things-face-with-one-layer-of =
    { $count ->
        [one] { $count } face with one layer of underlayment, where no membrane lies
       *[other] { $count } faces with one layer of underlayment, where no membrane lies
    }

# $count (number)
things-face-with-two-layers-of =
    { $count ->
        [one] { $count } face with two layers of underlayment, where no membrane lies
       *[other] { $count } faces with two layers of underlayment, where no membrane lies
    }

# $count (number)
things-strip-along-the-eaves =
    { $count ->
        [one] { $count } strip along the eaves
       *[other] { $count } strips along the eaves
    }

# $count (number)
things-strip-around-what-comes-through =
    { $count ->
        [one] { $count } strip around what comes through
       *[other] { $count } strips around what comes through
    }

# $count (number)
things-wall-line-up-the-slope =
    { $count ->
        [one] { $count } wall line up the slope
       *[other] { $count } wall lines up the slope
    }

# $count (number)
things-course-up-the-wall-lines =
    { $count ->
        [one] { $count } course up the wall lines, one more a line
       *[other] { $count } courses up the wall lines, one more a line
    }

# $count (number)
things-wall-line-across-the-slope =
    { $count ->
        [one] { $count } wall line across the slope
       *[other] { $count } wall lines across the slope
    }

# $count (number)
things-wall-at-the-end-of =
    { $count ->
        [one] { $count } wall at the end of an eave
       *[other] { $count } walls at the end of an eave
    }

# $count (number)
things-chimney =
    { $count ->
        [one] { $count } chimney
       *[other] { $count } chimneys
    }

# $count (number)
things-lower-side-of-a-chimney =
    { $count ->
        [one] { $count } lower side of a chimney with its returns
       *[other] { $count } lower sides of chimneys with their returns
    }

# $count (number)
things-course-beside-chimneys-one-more =
    { $count ->
        [one] { $count } course beside chimneys, one more a side
       *[other] { $count } courses beside chimneys, one more a side
    }

# $count (number)
things-upper-side-of-a-chimney =
    { $count ->
        [one] { $count } upper side of a chimney with its returns
       *[other] { $count } upper sides of chimneys with their returns
    }

# $count (number)
things-stretch-around-a-chimney =
    { $count ->
        [one] { $count } stretch around a chimney
       *[other] { $count } stretches around chimneys
    }

# $count (number)
things-cricket =
    { $count ->
        [one] { $count } cricket
       *[other] { $count } crickets
    }

# $count (number)
things-piece-of-a-crickets-frame =
    { $count ->
        [one] { $count } piece of a cricket's frame
       *[other] { $count } pieces of crickets' frames
    }

# $count (number)
things-cricket-both-faces =
    { $count ->
        [one] { $count } cricket, both faces
       *[other] { $count } crickets, both faces
    }

# $count (number)
things-valley-of-a-cricket =
    { $count ->
        [one] { $count } valley of a cricket
       *[other] { $count } valleys of crickets
    }

# $count (number)
things-line-of-a-cricket-at =
    { $count ->
        [one] { $count } line of a cricket at its chimney
       *[other] { $count } lines of crickets at their chimneys
    }

# $count (number)
things-pipe-of-this-size =
    { $count ->
        [one] { $count } pipe of this size
       *[other] { $count } pipes of this size
    }

# $count (number)
things-course-beside-chimneys-and-skylights =
    { $count ->
        [one] { $count } course beside chimneys and skylights, one more a side
       *[other] { $count } courses beside chimneys and skylights, one more a side
    }

# $count (number)
things-lower-or-upper-side-of =
    { $count ->
        [one] { $count } lower or upper side of a chimney or skylight
       *[other] { $count } lower and upper sides of chimneys and skylights
    }

# $count (number)
things-eave =
    { $count ->
        [one] { $count } eave
       *[other] { $count } eaves
    }

# $count (number)
things-rake =
    { $count ->
        [one] { $count } rake
       *[other] { $count } rakes
    }

# $count (number)
things-ridge =
    { $count ->
        [one] { $count } ridge
       *[other] { $count } ridges
    }

# $count (number)
things-hip =
    { $count ->
        [one] { $count } hip
       *[other] { $count } hips
    }

# $count (number)
things-valley =
    { $count ->
        [one] { $count } valley
       *[other] { $count } valleys
    }

# $count (number)
things-wall-line =
    { $count ->
        [one] { $count } wall line
       *[other] { $count } wall lines
    }

# $count (number)
things-step =
    { $count ->
        [one] { $count } step
       *[other] { $count } steps
    }

# $count (number)
things-pitch-change =
    { $count ->
        [one] { $count } pitch change
       *[other] { $count } pitch changes
    }

# $count (number)
things-pipe-boot =
    { $count ->
        [one] { $count } pipe boot
       *[other] { $count } pipe boots
    }

# $count (number)
things-vent =
    { $count ->
        [one] { $count } vent
       *[other] { $count } vents
    }

# $count (number)
things-skylight =
    { $count ->
        [one] { $count } skylight
       *[other] { $count } skylights
    }

# $count (number)
things-escape-window =
    { $count ->
        [one] { $count } escape window
       *[other] { $count } escape windows
    }

# $count (number)
things-other-penetration =
    { $count ->
        [one] { $count } other penetration
       *[other] { $count } other penetrations
    }

# $count (number)
things-strip =
    { $count ->
        [one] { $count } strip
       *[other] { $count } strips
    }

# $count (number)
things-roll =
    { $count ->
        [one] { $count } roll
       *[other] { $count } rolls
    }

# $count (number)
things-stick =
    { $count ->
        [one] { $count } stick
       *[other] { $count } sticks
    }

# $count (number)
things-package =
    { $count ->
        [one] { $count } package
       *[other] { $count } packages
    }

## Packages that kits name, counted: looked up by their English

# $count (number)
packages-hour =
    { $count ->
        [one] { $count } hour
       *[other] { $count } hours
    }

# $count (number)
packages-box =
    { $count ->
        [one] { $count } box
       *[other] { $count } boxes
    }

# $count (number)
packages-piece =
    { $count ->
        [one] { $count } piece
       *[other] { $count } pieces
    }

# $count (number)
packages-stick =
    { $count ->
        [one] { $count } stick
       *[other] { $count } sticks
    }

# $count (number)
packages-roll =
    { $count ->
        [one] { $count } roll
       *[other] { $count } rolls
    }

# $count (number)
packages-bag =
    { $count ->
        [one] { $count } bag
       *[other] { $count } bags
    }

# $count (number)
packages-set =
    { $count ->
        [one] { $count } set
       *[other] { $count } sets
    }

# $count (number)
packages-boot =
    { $count ->
        [one] { $count } boot
       *[other] { $count } boots
    }

# $count (number)
packages-bundle =
    { $count ->
        [one] { $count } bundle
       *[other] { $count } bundles
    }

# $count (number)
packages-insert =
    { $count ->
        [one] { $count } insert
       *[other] { $count } inserts
    }

# $count (number)
packages-cap =
    { $count ->
        [one] { $count } cap
       *[other] { $count } caps
    }

# $count (number)
packages-vent =
    { $count ->
        [one] { $count } vent
       *[other] { $count } vents
    }

# $count (number)
packages-tube =
    { $count ->
        [one] { $count } tube
       *[other] { $count } tubes
    }

# $count (number)
packages-tarpaulin =
    { $count ->
        [one] { $count } tarpaulin
       *[other] { $count } tarpaulins
    }

# $count (number)
packages-spool =
    { $count ->
        [one] { $count } spool
       *[other] { $count } spools
    }

# $count (number)
packages-sheet =
    { $count ->
        [one] { $count } sheet
       *[other] { $count } sheets
    }

# $count (number)
packages-rope =
    { $count ->
        [one] { $count } rope
       *[other] { $count } ropes
    }

# $count (number)
packages-permit =
    { $count ->
        [one] { $count } permit
       *[other] { $count } permits
    }

# $count (number)
packages-module =
    { $count ->
        [one] { $count } module
       *[other] { $count } modules
    }

# $count (number)
packages-lead =
    { $count ->
        [one] { $count } lead
       *[other] { $count } leads
    }

# $count (number)
packages-kit =
    { $count ->
        [one] { $count } kit
       *[other] { $count } kits
    }

# $count (number)
packages-device =
    { $count ->
        [one] { $count } device
       *[other] { $count } devices
    }

# $count (number)
packages-day =
    { $count ->
        [one] { $count } day
       *[other] { $count } days
    }

# $count (number)
packages-container =
    { $count ->
        [one] { $count } container
       *[other] { $count } containers
    }

# $count (number)
packages-can =
    { $count ->
        [one] { $count } can
       *[other] { $count } cans
    }

# $count (number)
packages-anchor =
    { $count ->
        [one] { $count } anchor
       *[other] { $count } anchors
    }

## Roofs that were taped

tape-face-from-measurements = Face from measurements…
tape-from-measurements = From measurements…
tape-type-what-a-tape-said = Type what the tape read on the deck: sides, diagonals, pitch
tape-form = Form
tape-triangle = Triangle
tape-parallelogram = Parallelogram
tape-trapezoid = Trapezoid
tape-any-with-diagonals = Any, with diagonals
tape-eave = Eave
tape-right-side = Right side
tape-left-side = Left side
tape-top = Top
tape-straight-up = Straight up
tape-if-taped = if taped
tape-as-a-pitch = as a pitch
tape-by-a-level = by a level
tape-pitch-as-typed = Pitch as typed
tape-or-12-over-24 = 6:12, 26.6°, 50%, or 12" over 24"
tape-rise = Rise
tape-hold-the-level-level-with = Hold the level level, with one end on the deck: the distance from its other end straight down to the deck.
tape-length-of-the-level = Length of the level
tape-spread-at-most = Correct at most
tape-readings-that-are-corrected-by = Readings that need more correction than this make no face; 1" for a face of a house is common practice, no source.
tape-lay-it = Lay it
tape-beside-the-roof = beside the roof
tape-to-join-it-to-a = To join it to a face, select a side of that face on the drawing; then choose here which side meets it.
tape-add-face = Add face
tape-one-corner-more = One corner more
tape-one-corner-less = One corner less
tape-another-diagonal = Another diagonal
tape-take-this-diagonal-away = Take this diagonal away
tape-diagonal-from-corner = Diagonal from corner
tape-to-corner = to corner
tape-picture-of-the-face-as = Picture of the face as typed

# $from (text)
# $to (text)
tape-side = Side { $from }–{ $to }

# $from (text)
# $to (text)
tape-diagonal = Diagonal { $from }–{ $to }

tape-still-needed = Still needed:{" "}
tape-nothing-checks-these-readings-one = Nothing checks these readings: one more diagonal would.
tape-the-readings-agree = The readings agree.

# $closing_error (text)
tape-the-readings-miss-by-at = The readings miss by { $closing_error } at most. It is spread over all of them (least squares, all with the same weight).

# $name (text)
tape-if-one-was-misread-it = If one was misread, it is most likely: { $name }.

# $own (text)
# $side (text)
# $face (text)
tape-on-side-of = { $own } on side { $side } of { $face }

# $from (text)
# $to (text)
tape-the-line-from-corner-to = the line from corner { $from } to { $to }

# $corner (text)
tape-the-height-of-corner-over = the height of corner { $corner } over the eave

# $most (text)
# $value (text)
tape-a-face-has-3-to = a face has 3 to { $most } corners, not { $value }

# $value (text)
# $value2 (text)
tape-the-face-has-corners = { $value }: the face has { $value2 } corners

# $value (text)
tape-must-be-more-than-0 = { $value } must be more than 0 and less than 1 km

# $value (text)
tape-corner-is-held-by-too = corner { $value } has too few readings: tape another diagonal to it from a corner that has enough

tape-these-sides-could-lean-either = these sides could lean either way: tape a diagonal as well

# $of (text)
# $is (text)
# $reach (text)
# $is2 (text)
tape-cant-be-the-other-two = { $of } can't be { $is }: the other two sides of its triangle reach { $reach } at most, { $is2 } less

# $closing_error (text)
# $limit (text)
# $worst (text)
tape-the-readings-miss-by-more = the readings miss by { $closing_error }, more than { $limit }: { $worst } fits worst; tape it again

tape-these-lengths-make-a-face = these lengths make a face that folds over itself or has no area: check which corner is which

## Panes beside the drawing

desk-drawing = Drawing
desk-panes = Panes
desk-next-pane = Next pane
desk-next-pane-help = Move the keyboard to the next pane: the drawing, then what is open beside it.
desk-previous-pane = Previous pane
desk-previous-pane-help = Move the keyboard to the pane before.
desk-close-pane = Close this pane
desk-close-pane-help = Close the pane that has the keyboard. The drawing stays.
desk-own-window = Own window
desk-own-window-help = Move the pane that has the keyboard into a window of its own, for a second screen, or back beside the drawing.
desk-beside-the-drawing = Beside the drawing
desk-beside-the-drawing-help = Put this pane back beside the drawing.
desk-reset = Panes as at first
desk-reset-help = Put all panes back in their first places and widths. What is open stays open.
desk-side-panel = Side panel
desk-side-panel-help = Show the panel at the right, with properties, findings and quantities. Drag its edge to make it wider.
desk-pane-nothing-to-act-on = The keyboard is with the drawing: press in another pane first, or press F6.
desk-drag-a-tab = Drag a tab to another place to rearrange
desk-border = Border between panes
# $pane (text)
desk-close = Close { $pane }

# $pane (text)
desk-in-own-window = { $pane } in a window of its own

# $pane (text)
# $job (text)
desk-window-title = { $pane } – { $job }

## What each command does

command-new = Start an empty job; you are asked about unsaved changes first.
command-open = Open a job from a file; you are asked about unsaved changes first.
command-sample = Open a finished job to try things on.
command-import = Read a building from an open format and raise its roof.
command-import-folder = Read every building file in a folder, then choose one building.
command-save = Write the job to its file.
command-save-as = Write the job to another file.
command-load-kit = Take modules, flashing and parts from a kit file.
command-load-rule-book = Check this job against another rule book.
command-load-prices = Price the order from another list.
command-compare-job = Compare this order with that of another job.
command-add-offer = Set another supplier's prices beside these.
command-rule-book = Read and change the limits and rules of this job.
command-save-rule-book = Write the rule book, with your changes, to a file.
command-compare-rule-book = See where another rule book differs from this one.
command-quit = Close the program; you are asked about unsaved changes first.
command-export-by-part = A PDF of the order by part, for the supplier.
command-export-by-stage = A PDF of the order by stage of work, for the crew.
command-export-workbook = The order as a workbook with a sheet for each list.
command-export-csv = The order as a table that any spreadsheet reads.
command-export-text = The order as plain text, to paste into a message.
command-export-json = The order as data for other programs.
command-print-build = A PDF of the roof with the lines to snap.
command-print-checklist = A PDF of the crew checklist, with boxes to check off.
command-print-pallet = A PDF to count the delivery on.
command-print-claim = A PDF of what came short, damaged or over.
command-export-svg = The plan as lines, for drawing programs.
command-export-geojson = The plan in its place on the globe, for maps.
command-export-glb = The house in space, for 3-D programs.
command-save-steps = Every step since the job was opened, as a file of edits.
command-undo = Take back the last step.
command-redo = Do again the step that was undone last.
command-history = List all steps, and go back to any of them.
command-delete = Delete what is selected; a selected module is switched off.
command-copy = Put the selected blocks and penetrations on the clipboard: for another place, face, window or job.
command-cut = Put the selected blocks and penetrations on the clipboard, and take them off this roof.
command-paste = Set down what was copied: a click or Enter sets it where its outline shows.
command-duplicate = Set another one beside what is selected, on the same face, where there is room.
command-nearer = Look at the drawing from nearer.
command-farther = Look at the drawing from farther away.
command-larger = Draw words, buttons and fields larger, up to three times.
command-smaller = Draw words, buttons and fields smaller.
command-usual-size = Draw words, buttons and fields at their usual size.
command-start-page = Go on with a job that was open lately, or begin another one.
command-hold-all = Select every block and penetration, to move or delete them together.
command-copy-picture = Put the drawing on the clipboard as you see it.
command-copy-svg = Put the plan, or the face shown, on the clipboard as lines.
command-copy-steps = Put every step since the job was opened on the clipboard, as edits.
command-fill = Lay the most modules that the rules allow on the selected face, or on every face.
command-copy-to-face = Copy the selected block to another face.
command-split = Cut the selected block in two beside the selected module.
command-join = Join the selected block with the nearest one that is flush with it.
command-align = Line the selected block up with the nearest one.
command-roof-report = Areas, pitches and edge lengths of the roof, to order shingles by.
command-coursing = Set the exposure and the first course of a face.
command-fit-up = Enter the deck as measured, and find the line and reveal that fit it.
command-lines = Show in a corner of the drawing what each kind of line stands for.
command-pathways = Show the ways kept clear for the fire department.
command-feet-inches = Show lengths in feet, inches and sixteenths.
command-metric = Show lengths in meters and millimeters.
command-language = Show everything in this language.
command-theme = Switch between a dark window and a light one.
command-lesson = Learn the program on a first job, one step at a time.
command-leave-lesson = Close the steps; the job stays.
command-find = Find a command by its words, or a face, part, block or penetration to go to.
command-menus = The keyboard goes to the menus; arrow keys walk them, Enter opens.
command-held-menu = What a right click on it shows.
command-keys = List every command that has a key.
command-glossary = What roofers' and installers' words mean.
command-cautions = What this plan does not do for you. Read it before anyone climbs.
command-checklist = What the crew checks before, during and after the work.

## Menus, commands and windows

window-file = File
window-edit = Edit
window-view = View
window-help = Help
window-new-job = New job
window-open-job = Open job…
window-open-recent = Open recent
window-open-the-sample = Open the sample
window-export = Export
window-write-what-to-order-to = Write what to order: to print, for a spreadsheet, to read, or for another program; what the crew prints; or the plan for maps, the house for 3-D programs
window-order-as-xlsx = Order as XLSX…
window-order-to-print-by-part = Order to print, by part…
window-order-to-print-by-stage = Order to print, by stage…
window-plan-to-build-from-to = Plan to build from, to print…
window-plan-as-svg = Plan as SVG…
window-copy-the-drawing-as-a = Copy the drawing as a picture
window-copy-the-drawing-as-svg = Copy the drawing as SVG
window-copy-the-steps-since-opening = Copy the steps since opening as edits
window-steps-since-opening-as-edits = Steps since opening as edits…
window-the-steps-are-on-the = The steps are on the clipboard as edits: done again on the job as it was opened, they make this one.
window-the-steps-could-not-be = The steps could not be written
window-the-drawing-is-on-the = The drawing is on the clipboard.
window-the-drawing-is-on-the-clipboard = The drawing is on the clipboard as SVG.
window-checklist-to-print = Checklist to print…
window-pallet-list-to-print = Pallet list to print…
window-delivery-claim-to-print = Delivery claim to print…
window-print = Print…
window-write-a-pdf-of-this = Write a PDF of this list, with boxes to check off
window-order-as-text = Order as text…
window-order-as-csv = Order as CSV…
window-order-as-json = Order as JSON…
window-load-a-kit = Load a kit…
window-load-a-rule-book = Load a rule book…
window-load-a-price-list = Load a price list…
window-quit = Quit
window-undo = Undo
window-redo = Redo
window-delete-what-is-selected = Delete what is selected
window-copy = Copy
window-cut = Cut
window-paste = Paste
window-duplicate = Duplicate
window-nearer = Nearer
window-farther = Farther
window-larger = Larger type
window-smaller = Smaller type
window-usual-size = Usual type
window-start-page = Start page
window-fit = Fit
window-show-all-of-it = Show all of it
window-the-roof-from-above-north = The roof from above, north up
window-face-on = One face
window-one-face-true-to-size = One face by itself, true to size, its eave down
window-face-shown = Face shown
window-course-lines-in-plan = Course lines in plan
window-dark-or-light = Dark or light
window-light = Light
window-dark = Dark
window-feet-and-inches = Feet and inches
window-metric = Metric
window-before-anyone-climbs = Before anyone climbs
window-keys = Keys
window-find-a-command = Find…
window-what-to-do = What to do, or where to go
window-type-a-word-of-what = A command, a face, a part, a block, a pipe
window-no-command-has-these-words = Nothing has these words. Try one of them alone.
window-there-is-nothing-that-this = There is nothing to do this to at present.
window-ok = OK
window-cancel = Cancel
window-nudge-by-1-in = Nudge by 1 in
window-arrow-keys = Arrow keys
window-nudge-by-1-ft = Nudge by 1 ft
window-shift-arrow-keys = Shift + arrow keys
window-nudge-by-1-16-in = Nudge by 1/16 in
window-alt-arrow-keys = Alt + arrow keys
window-aim-while-drawing = Aim while drawing or placing; set it
window-aim-keys = Arrow keys 1 ft, with Shift 10 ft, with Alt 1 in; Enter
window-menus = Go to the menus
window-held-menu = Menu of what is selected
window-switch-the-selected-module = Switch the selected module
window-x-or-double-click = X or double-click
window-hold-several-things = Select several things
window-drag-a-box-or-shift = Drag a box, or Shift + click
window-add-a-corner-to-a = Add a corner to a side
window-double-click-the-side = Double-click the side
window-drag-without-snapping = Drag without snapping
window-ctrl-or-alt = Ctrl or Alt
window-drag-one-faces-corner-alone = Drag one face's corner alone
window-shift = Shift
window-let-go-give-up-a = One step back: a corner, a typed word, a drag, what is selected; from a pane back to the drawing
window-esc = Esc
window-pan = Pan
window-space-middle-or-right-drag = Space, middle or right drag
window-select = Select
window-draw-face = Draw roof
window-penetration = Penetration
window-tape = Tape
window-length-of-this-side = Length of this side
window-angle = Angle
window-to-the-side-before-on = To the side before, on the side where you point: 90 is square, 135 a bay. Empty: as you point.
window-bearing = Bearing
window-of-the-first-side-by = Of the first side by the compass: 0 is north, 90 east. Empty: as you point.
window-size = Size
window-size-of-the-notch = Size of the notch
window-type-both-lengths-across-and = Type both lengths, across and up: 30' x 48'.
window-type-the-angle-in-degrees = Type the angle in degrees, such as 90 or 22.5.
window-set-the-corner-across-or = Set the corner across, or type the size and Enter.
window-square-to-the-first-side = square to the first side
window-square-it = Square it
window-turns-sides-that-are-nearly = Turns sides that are nearly square onto the two directions of the house. Slanted sides stay as they are.
window-close-the-outline = Close the outline
window-take-back-a-corner = Take back a corner
window-due-east-west = due east–west
window-due-north-south = due north–south
window-at-45 = at 45°
window-in-line-with-a-corner = in line with a corner
window-closes-the-face = back at the first corner: done
window-in-the-middle-of-the = in the middle of the face
window-point-where-the-side-should = Point where the side should go, then press Enter.
window-a-side-is-longer-than = A side must be longer than 0.
window-an-outline-has-at-least = An outline has at least three corners: click another one.
window-these-corners-lie-on-one = These corners lie on one line and make no outline: take one back.
window-a-hole-lies-inside-one = A hole lies inside one face, a courtyard inside the walls of one part: take corners back until all are.
window-there-is-no-face-here = There is no face here: press on one to place a block.
window-there-is-no-face-to = There is no face to show yet: draw one first.
window-a-face-keeps-its-last = A face keeps its last three corners: delete the face instead.
window-delete-is-for-what-is = Delete is for what is selected on the drawing: press there first.
window-switch-this-module-on = Switch this module on
window-switch-this-module-off = Switch this module off
window-switch-all-modules-on = Switch all modules on
window-add-a-corner-here = Add a corner here
window-delete-this-corner = Delete this corner
window-delete-the-block = Delete the block
window-delete-the-penetration = Delete the penetration
window-delete-the-face = Delete the face
window-show-face-on = Show this face by itself
window-place-a-block = Place a block
window-start-with-the-roof = Start with the roof
window-draw-the-walls-one-corner = 1.  Draw the walls: one corner, and the size, such as 48' x 30'. The roof is raised over them, with gables or hips. Or draw it face by face.
window-mark-what-comes-through-the = 2.  Mark what comes through the roof: vents, pipes, chimneys.
window-place-a-block-of-modules = 3.  Place a block of modules and drag it. Findings and quantities follow as you move.
window-raise-a-roof-over-the = Raise a roof over the walls
window-draw-a-face = Draw a face
window-open-a-job = Open a job…
window-the-job = The job
window-name = Name
window-crew-notes = Crew notes
window-units = Units
window-a-name-is-needed = A name is needed.
window-type-a-whole-number-from = Type a whole number from 1 to 1000.
window-rise-in-12-of-run = Rise in 12 of run: 6:12. An angle (26.6°) or a slope (50%) works too.
window-downslope = Downslope
window-the-way-that-water-runs = The way that water runs: degrees clockwise from north, or N, NE, E …
window-height-of-the-face-at = Height of the face at its lower left corner, above a level that is the same for the whole job.
window-how-much-of-each-course = How much of each course is to the weather, up the slope. Usually 5" or 5 5/8" (common practice, no source).
window-first-course-line = First course line
window-from-the-eave-up-to = From the eave up to the first course line.
window-sides-true-length = Sides, true length
window-worked-out-from-the-roof = worked out from the roof
window-the-kind-follows-from-the = The kind follows from the faces. Choose one here only where the roof is different.
window-the-outline-folds-over-itself = The outline folds over itself or has no area: drag its corners apart, or undo.
window-east = East
window-north = North
window-in-plan-from-the-corner = In plan, from the corner where the face's own frame begins.
window-kind = Kind
window-shape = Shape
window-round = round
window-rectangle = rectangle
window-any-outline = any outline
window-across = Across
window-along-the-eave = Along the eave
window-up-the-slope = Up the slope
window-as-taped-on-the-deck = As taped on the deck.
window-clearance = Clearance
window-how-far-modules-stay-away = How far modules stay away, measured on the slope.
window-as-the-book-says = As the book says
window-from-the-lower-left-of = From the lower left of the face to the middle of it, on the slope.
window-it-lies-beside-all-faces = It lies beside all faces: drag it onto one.
window-rows = Rows
window-from-the-eave-up = From the eave up.
window-modules-in-a-row = Modules in a row
window-along-the-eave-2 = Along the eave.
window-modules-lie = Modules lie
window-long-side-along-the-eave = long side along the eave
window-long-side-up-the-slope = long side up the slope
window-the-gap-between-neighbouring-modules = The gap between neighboring modules; the kit gives its range.
window-on-face = On face
window-from-the-left-end-of = From the left end of the face to the block's left edge, on the slope.
window-up-from-the-eave = Up from the eave
window-from-the-lowest-point-of = From the lowest point of the face up the slope. For a block: where the base rail line is snapped.
window-shift-rows = Shift rows
window-to-the-right-against-the = To the right against the block's corner. Or drag the grip at a row's end.
window-locked = Locked
window-a-locked-block-stays-where = A locked block stays where it is when an array is fitted.
window-quantities = Quantities
window-nothing-to-order-yet-place = Nothing to order yet: place a block, and its parts are counted here.
window-accepted-by-a-person = Accepted by a person
window-do-this-undo-takes-it = Do this; undo takes it back. It was tried: it leaves fewer findings of this weight, and no new one.
window-looking-for-a-fix = Looking for a fix…
window-no-fix-was-found-among = No fix was found among moves, rows, modules and pathways.
window-no-single-step-clears-it = No single step clears it and keeps as many modules; together these do:
window-no-single-step-clears-it-these = No single step clears it; these together do:
window-waive = Waive…
window-accept-it-again = Accept it again…
window-accept-this-finding-with-a = Accept this finding, with a reason that shows in every output.
window-why-may-it-be-built = Why may it be built so?
window-who-says-so = Who says so?
window-waive-it = Waive it
window-write-a-reason-and-a = Write a reason and a name first.
window-take-the-waiver-back = Take the waiver back
window-modules-on-the-roof-their = Modules on the roof, their rated power, and what the job is sold for: lines, tax, delivery, overhead, profit.
window-that-cant-be-done = That can't be done
window-this-file-cant-be-opened = This file can't be opened
window-the-job-could-not-be = The job could not be saved
window-the-order-could-not-be = The order could not be written
window-the-sheet-could-not-be = The sheet could not be written
window-the-changes-since-it-was = The changes since it was last saved are lost unless you save them now.
window-dont-save = Don't save
window-path-of-the-file = Path of the file
window-replace-it = Replace it
window-type-where-the-file-is = Type where the file is, such as /home/me/jobs/alder-court.chalk.json.
window-this-is-a-folder-add = This is a folder: add a file name.
window-there-is-a-file-of = There is already a file with this name. Press “Replace it” to write over it.

# $what (text)
window-given-up = Given up: { $what }. Redo brings it back.
window-unsaved-work-was-kept = Unsaved work was kept
window-the-program-did-not-end = The program did not close properly last time. It kept a copy of what was not saved; the job files themselves are as they were.
window-open-this-copy = Open this copy
window-delete-it = Delete it
window-ask-again-next-time = Ask again next time
window-opened-from-the-kept-copy = Opened from the kept copy. It is not saved yet.
window-planning-aid-only-read-the = Planning aid only: read the cautions
window-chalkcourse-is-a-planning-aid = Chalkcourse is a planning aid. It proves nothing about your building. Confirm every limit against the codes adopted locally, the product's listing and the maker's instructions.
window-structural-design-belongs-to-a = Structural design belongs to a licensed engineer. Electrical work belongs to a qualified electrician, licensed where that is required.
window-falls-kill-keep-off-the = Falls kill. Keep off the roof without fall protection, on wet or icy decks, and in wind.
window-direct-current-kills-and-it = Direct current kills, and it can't be switched off at the module: a module is live whenever light falls on it.
window-mark = {""}

## Circuits and wires

wires-planning-aid = A planning aid. Electrical design and work belong to licensed people where the law says so. Modules are live whenever light falls on them: neither an open disconnect nor rapid shutdown makes a module's own leads dead. Never part dc plugs under load.
wires-not-checked = Not checked: supports and bends of cables, working space, what breakers can interrupt, the house's own wiring and loads, whether a box stands in a pathway, what stands on labels, and each matter of which a rule says that something is not known. An electrician checks these by the code as adopted.

# $year (text)
wires-edition = Sections are those of NEC { $year }. Only the text of 2017 was read; later ones are quoted from memory, and 2026 was not read.

# $name (text)
wires-circuit = circuit { $name }
wires-a-circuit = a circuit

# $name (text)
wires-junction = box { $name }
wires-title-string-voltage = Strings stay below the highest voltage
wires-reason-string-voltage = On the coldest morning a string has its highest voltage. Too much of it destroys the inverter, and an arc does not go out by itself.
wires-title-string-start = Strings keep enough voltage on hot days
wires-reason-string-start = Hot cells give less voltage. Below its lowest an inverter stops working.
wires-title-circuit-size = Circuits have as many modules as their devices allow
wires-reason-circuit-size = Each maker says how few and how many devices one circuit may have; a breaker carries no more.
wires-title-inverter-input = Each input gets what it takes
wires-reason-inverter-input = More strings or more current than an input takes heat plugs and conductors.
wires-title-parallel-strings = Strings on one input are alike
wires-reason-parallel-strings = A string that is shorter or faces another way pulls the others off their working point, and they feed it.
wires-title-string-faces = A string of bare modules faces one way
wires-reason-string-faces = The module with the least sun holds back the whole string.
wires-title-leads-reach = Leads reach from module to module
wires-reason-leads-reach = A lead that is pulled to reach breaks its plug. Plugs of two makes are never mated.
wires-title-device-input = Each device takes its module
wires-reason-device-input = A device fails when its module gives more than it takes.
wires-title-modules-wired = Every module is in a circuit
wires-reason-modules-wired = A module in no circuit gives nothing, and its leads stay live.
wires-geometry-modules-wired = a module is in one circuit or in none
wires-by-inverter-volts = the inverter's highest input voltage
wires-by-module-volts = the module's system voltage
wires-by-dwelling-volts = 600 V in dwellings
wires-by-least-volts = the inverter's lowest voltage
wires-by-device-count = what the devices' maker allows in one circuit
wires-by-device-watts = the power that the devices' maker allows in one string
wires-by-string-current = the current of the string
wires-by-breaker = the branch's breaker
wires-by-one = one module is the least

# $circuit (text)
# $modules (text)
# $volts (text)
# $most (text)
# $by (text)
wires-string-voltage = { $circuit }: { $modules } give up to { $volts } V at the lowest temperature; { $most } V is the most, by { $by }. Take modules out of it.

# $circuit (text)
# $modules (text)
# $volts (text)
# $least (text)
wires-string-start = { $circuit }: { $modules } with hot cells work at { $volts } V; the inverter needs { $least } V. Put modules into it.

# $circuit (text)
# $modules (text)
# $least (text)
# $most (text)
# $by (text)
wires-circuit-size = { $circuit } has { $modules }; it holds { $least } to { $most }, by { $by }.

# $least (text)
# $most (text)
wires-from-to = { $least } to { $most }

# $circuit (text)
wires-no-input = { $circuit } is led to no input of an inverter.
wires-no-input-measured = no input
wires-no-input-required = an input of an inverter

# $circuit (text)
# $strings (text)
# $most (text)
wires-input-strings = { $circuit } is string { $strings } on its input, which takes { $most }. Lead it to another.

# $circuit (text)
# $amps (text)
# $most (text)
wires-input-current = { $circuit } brings the current at its input to { $amps } A; it takes { $most } A.

# $circuit (text)
# $other (text)
wires-parallel-faces = { $circuit } faces another way than { $other } on the same input. Lead it to another input.

# $circuit (text)
# $modules (text)
# $other (text)
# $same (text)
wires-parallel-counts = { $circuit } has { $modules }, and { $other } on the same input has { $same }. Make them alike, or lead one to another input.

# $circuit (text)
wires-string-faces = { $circuit } has modules that face different ways, and no devices.
wires-two-ways = different ways
wires-one-way = one way

# $circuit (text)
# $links (number)
# $apart (text)
# $reach (text)
wires-leads-short =
    { $links ->
        [one] { $circuit }: leads and extension leads don't reach between two modules: { $apart }, with leads of { $reach } together.
       *[other] { $circuit }: leads and extension leads don't reach in { $links } places, first { $apart }, with leads of { $reach } together.
    }

# $circuit (text)
# $links (number)
wires-leads-nowhere =
    { $links ->
        [one] { $circuit }: two modules that follow one another lie on faces that don't meet.
       *[other] { $circuit }: leads don't reach in { $links } places, the first between faces that don't meet.
    }
wires-no-way = faces that don't meet

# $has (text)
# $most (text)
wires-device-input = the module gives { $has }, and its device takes { $most }.

# $block (text)
# $modules (number)
wires-not-wired =
    { $modules ->
        [one] { $block }: { $modules } module is in no circuit.
       *[other] { $block }: { $modules } modules are in no circuit.
    }

# $circuit (text)
# $modules (number)
wires-circuit-gone =
    { $modules ->
        [one] { $circuit } names { $modules } module that is not there. Bring it back, or take it out of the circuit.
       *[other] { $circuit } names { $modules } modules that are not there. Bring them back, or take them out of the circuit.
    }
wires-kit-without-wiring = the kit does not say how its modules are wired
wires-no-circuit-yet = no circuit is drawn yet
wires-with-devices = the kit has a device at each module
wires-without-devices = the kit has no device at its modules
wires-branches-instead = the kit's circuits are ac branches
wires-unknown-inverter = which inverter it has
wires-unknown-lowest = the lowest temperature
wires-unknown-hottest = how hot cells become

wires-title-arc-fault = Something stops at an arc
wires-reason-arc-fault = An arc of direct current does not go out by itself; it sets fire to the roof.
wires-title-ground-fault = Something stops at a fault to ground
wires-reason-ground-fault = A conductor that touches metal makes the whole array live to who touches it, and burns on unseen.
wires-title-overcurrent = Strings are fused where others could feed a fault
wires-reason-overcurrent = Strings on one input feed one that fails; without a fuse its conductors and modules burn.
wires-title-conductor-size = Conductors carry their current where they lie
wires-reason-conductor-size = A conductor that is too thin for its current and its heat loses its insulation.
wires-title-voltage-drop = Little voltage is lost on the way
wires-reason-voltage-drop = What is lost on the way is heat, and with ac devices it lifts the voltage until they switch off. Advice, not a limit.
wires-title-grounding-conductor = The grounding conductor is thick enough
wires-reason-grounding-conductor = It carries a fault until something switches off.
wires-title-bonding = The array is bonded, and stays so
wires-reason-bonding = Metal that is not bonded becomes live at a fault, also while a module is out.
wires-title-plugs-mate = Plugs that are mated are of one make
wires-reason-plugs-mate = Plugs of two makes fit one another, heat up and burn.
wires-title-box-fill = Junction boxes have room
wires-reason-box-fill = Conductors that are pressed into a box lose their insulation.
wires-title-raceway-fill = Raceways have room
wires-reason-raceway-fill = A raceway that is too full strips conductors when they are pulled, and keeps their heat.
wires-title-dc-ac-apart = Circuits of two kinds are kept apart
wires-reason-dc-ac-apart = Who opens a box for the one must not find the other live.
wires-title-raceway-inside = Dc inside the building lies in metal
wires-reason-raceway-inside = An arc in plastic, in an attic, sets fire to the house.
wires-title-rapid-shutdown = Shutdown leaves little live
wires-reason-rapid-shutdown = Firefighters cut where they must.
wires-title-box-place = Junction boxes on the roof stand clear
wires-reason-box-place = A box at an edge, in a valley or under a module leaks, or can't be reached.
wires-title-point-of-connection = The panel takes the output
wires-reason-point-of-connection = A bus is fed from two sides and protected from one: it may carry more than it holds.
wires-title-readings = Readings are what they should be
wires-reason-readings = A string that reads wrong is wired wrong, or damaged: find out before it is switched on.

# $circuit (text)
# $volts (text)
wires-arc-fault = { $circuit } has { $volts } V of direct current, and its inverter does not stop at an arc. From 80 V on something must.
wires-not-provided = not provided
wires-provided = provided

# $circuit (text)
wires-ground-fault = { $circuit }: its inverter does not stop at a fault to ground, and nothing else does.

# $circuit (text)
# $amps (text)
wires-no-fuse = { $circuit }: the other strings on its input could send { $amps } A into it, more than its conductors or its modules' series fuse hold. Fuse each string, or lead them to other inputs.

# $circuit (text)
# $fuse (text)
# $least (text)
wires-fuse-small = { $circuit }: a fuse of { $fuse } A is too small; its current asks for { $least } A.

# $circuit (text)
# $fuse (text)
# $most (text)
wires-fuse-large = { $circuit }: a fuse of { $fuse } A is too large; the modules allow { $most } A.
wires-leads = leads under the array
wires-home-run-stretch = home run to the box

# $leg (text)
wires-leg-stretch = leg { $leg } of the way down

# $circuit (text)
# $stretch (text)
# $gauge (text)
# $has (text)
# $asked (text)
wires-thin-carried = { $circuit }, { $stretch }: { $gauge } carries { $has } A where it lies, after all corrections; { $asked } A may flow.

# $circuit (text)
# $stretch (text)
# $gauge (text)
# $has (text)
# $asked (text)
wires-thin-terminals = { $circuit }, { $stretch }: at its terminals { $gauge } takes { $has } A; 1.25 times the current is { $asked } A.

# $circuit (text)
# $stretch (text)
# $gauge (text)
# $has (text)
# $asked (text)
wires-thin-protected = { $circuit }, { $stretch }: a breaker of { $has } A does not protect { $gauge }; { $asked } A is the most.

# $message (text)
# $gauge (text)
wires-take-gauge = { $message } Take { $gauge }.

# $message (text)
wires-take-none = { $message } 4 AWG would not do either: lay it cooler, or fewer together.

# $circuit (text)
# $volts (text)
# $share (text)
wires-drop-whole = { $circuit } loses { $volts } V, { $share }, on its way at its rated current.

# $circuit (text)
# $volts (text)
# $share (text)
wires-drop-part = { $circuit } loses { $volts } V, { $share }, at its rated current on what is known of its way.

# $junction (text)
# $taken (text)
# $holds (text)
wires-box-full = { $junction } holds { $holds } cubic inches; its conductors take { $taken }. Take a larger one.

# $junction (text)
# $conductors (text)
# $share (text)
# $most (text)
wires-raceway-full = { $junction }: { $conductors } conductors fill { $share } of the raceway; { $most } is the most. Take a larger one, or a second.

# $circuit (text)
# $gauge (text)
# $device (text)
# $least (text)
wires-ground-thin = { $circuit }: a grounding conductor of { $gauge } is too thin for { $device } A; take { $least }.

# $gauge (text)
wires-ground-bare = a grounding conductor of { $gauge } is thinner than 6 AWG: protect it against damage.

# $way (text)
# $amps (text)
# $kilowatts (text)
# $most (text)
# $fits (text)
wires-connection = the output of { $amps } A, { $kilowatts } kW, is more than { $way } takes: the largest that fits is { $most } A, { $fits } kW.

# $way (text)
# $amps (text)
# $kilowatts (text)
wires-connection-nothing = the output of { $amps } A, { $kilowatts } kW, is more than { $way } takes: nothing fits. Choose another way with a licensed electrician.
wires-way-opposite-ends = the end of the bus opposite to the main (120 %)
wires-way-whole-bus = a bus that holds main and output together (100 %)
wires-way-sum = a bus that holds the sum of all breakers but the main
wires-way-centre-fed = one end of a panel fed in the middle (120 %)
wires-way-feeder = the feeder
wires-way-supply-side = the supply side of the main

# $junction (text)
wires-not-apart = { $junction } and its raceway hold circuits of the array and others of another kind of current. Part them, or lay a second raceway.
wires-together = together
wires-apart = apart
wires-no-module-shutdown = plain strings: shutdown at the module is not provided. Within the array they stay live by day; ask what the code as adopted accepts in its place.

# $junction (text)
# $away (text)
wires-shutdown-boundary = plain strings stay live up to { $junction }, { $away } from the array; beyond 1 ft they must be shut down. Put a listed switch within that foot, or devices at the modules.

# $junction (text)
wires-shutdown-boundary-off = plain strings stay live up to { $junction }, on a face without modules; beyond 1 ft from the array they must be shut down. Put a listed switch within that foot, or devices at the modules.
wires-on-another-face = on another face

# $circuit (text)
# $volts (text)
wires-standby-volts = { $circuit } keeps { $volts } V when it is shut down; 30 V is the most. Put fewer devices in it.

# $junction (text)
wires-inside-not-metal = { $junction }: the way down leads through the building, and the raceway is not of metal.

# $junction (text)
wires-inside-free = { $junction } is under the deck, and a leg of its way down lies in free air. Lay it in a metal raceway.
wires-no-metal = no metal
wires-metal = metal

# $junction (text)
# $thing (phrase)
# $away (text)
# $asked (text)
wires-box-near = { $junction } has { $away } to { $thing }; { $asked } is asked. Move it.

# $junction (text)
# $thing (phrase)
wires-box-over = { $junction } reaches over { $thing }. Move it.

# $junction (text)
wires-box-nowhere = { $junction } stands on the roof, and there is no face at its place.
wires-no-face = no face
wires-on-a-face = a face

# $junction (text)
# $depth (text)
wires-box-under-modules = { $junction }: its flashing reaches { $depth } under modules. Move it clear.

# $circuit (text)
# $volts (text)
# $celsius (text)
# $least (text)
# $most (text)
wires-reading-volts = { $circuit } reads { $volts } V at { $celsius } °C; { $least } to { $most } V is expected. Count its modules and look for one that is reversed or damaged before anything is switched on.

# $circuit (text)
wires-reading-polarity = { $circuit }: + and − are taken for one another. Stop: set it right with the inverter disconnected and plugs open.

# $circuit (text)
# $megohms (text)
# $least (text)
wires-reading-insulation = { $circuit }: its insulation is { $megohms } MΩ; { $least } MΩ is the least. Find the damaged lead before it is switched on.

# $circuit (text)
# $volts (text)
# $asked (text)
wires-reading-test = { $circuit }: its insulation was tested at { $volts } V; its voltage asks for { $asked } V.

# $circuit (text)
wires-reading-connected = { $circuit }: its insulation was tested with electronics connected; their makers don't allow it, or don't say. Look whether they still work.
wires-reversed = reversed
wires-as-marked = as marked
wires-tested-connected = tested connected
wires-tested-alone = tested with electronics disconnected
wires-not-listed = the kit names no listing for its lugs and bonding jumpers.
wires-no-listing = no listing
wires-a-listing = a listing
wires-path-opens = the grounding path opens when a module is taken out: the conductor does not lie whole in the lugs. Bridge it before one is taken out.
wires-opens = opens
wires-stays-whole = stays whole

# $circuit (text)
# $plug (text)
# $other (text)
wires-plugs-differ = { $circuit } mates { $plug } with { $other }: plugs of two makes are never mated.
wires-no-box = no circuit is led to a junction box yet
wires-no-raceway = no box has a way down in a raceway yet
wires-no-reading = no reading was typed in yet

# $what (text)
wires-kit-silent = the kit does not say: { $what }
wires-gap-lead-gauge = how thick the conductors of its leads are
wires-gap-home-run = the conductors to the junction box
wires-gap-run-down = the conductors from the junction box down
wires-gap-raceway = the raceway
wires-gap-own-area = how thick its conductors are with their insulation
wires-gap-box-volume = how much room the junction box has
wires-gap-box-flashing = how large the flashing of a box is
wires-gap-grounding = the grounding conductor
wires-gap-bonding = how the array is bonded
wires-gap-arc-fault = whether its inverter stops at arcs
wires-gap-ground-fault = whether its inverter stops at faults to ground
wires-unknown-highest = the highest temperature
wires-unknown-attic = how warm the attic becomes
wires-unknown-service = the panel that the output is connected to
wires-unknown-other-breakers = the sum of the other breakers
wires-unknown-way-down = the way down from each junction box

# $least (text)
# $least_by (text)
# $most (text)
# $most_by (text)
# $source (text)
wires-window = A circuit holds { $least } ({ $least_by }) to { $most } modules ({ $most_by }; { $source }).

# $name (text)
# $modules (text)
# $kilowatts (text)
wires-circuit-line = Circuit { $name }: { $modules }, { $kilowatts } kW

# $lowest (text)
# $highest (text)
wires-volts-from-to = Works from { $lowest } V; at most { $highest } V when cold

# $highest (text)
wires-volts-to = At most { $highest } V

# $most (text)
# $continuous (text)
# $source (text)
wires-amps = At most { $most } A; conductors and overcurrent devices by { $continuous } A ({ $source })

# $volts (text)
wires-meter = A meter shows { $volts } V of it open, at 25 °C and before devices are switched on

# $volts (text)
wires-meter-ac = A meter shows { $volts } V ac

# $order (text)
wires-order = Plugged in this order (block row-place): { $order }

# $name (text)
# $ways (text)
wires-home = Home to box { $name }: { $ways }

# $name (text)
wires-home-unknown = Home to box { $name }: the way is not known; put the box on a face that meets this one

# $stretch (text)
# $gauge (text)
# $insulation (text)
# $long (text)
# $carries (text)
# $celsius (text)
wires-stretch-line = { $stretch }: { $gauge }, { $insulation }, { $long }; carries { $carries } A at { $celsius } °C
wires-length-unknown = length not known

# $device (text)
# $least (text)
# $source (text)
wires-device-line = Overcurrent device { $device } A; at least { $least } A ({ $source })

# $amps (text)
# $source (text)
wires-device-lacking = Needs a fuse: others on its input could send { $amps } A into it ({ $source })

# $amps (text)
# $source (text)
wires-no-device = No overcurrent device is needed: others on its input could send { $amps } A into it ({ $source })

# $gauge (text)
# $device (text)
# $source (text)
wires-grounding-line = Grounding conductor { $gauge } at least, for { $device } A ({ $source })

# $volts (text)
# $share (text)
wires-drop-line = Loses { $volts } V, { $share }, on its way down

# $volts (text)
# $share (text)
wires-drop-line-part = Loses { $volts } V, { $share }, on what is known of its way

# $amps (text)
# $volts (text)
# $kilowatts (text)
wires-output-line = Output { $amps } A at { $volts } V, { $kilowatts } kW

# $breaker (text)
# $gauge (text)
wires-output-breaker = Breaker of the output { $breaker } A; conductors { $gauge } at least

# $breaker (text)
wires-output-breaker-alone = Breaker of the output { $breaker } A

# $way (text)
# $source (text)
# $most (text)
# $kilowatts (text)
wires-connection-line = Point of connection: { $way } ({ $source }); the largest output that fits is { $most } A, { $kilowatts } kW
wires-connection-unknown = Point of connection: not known yet; look at the panel

# $modules (number)
wires-loose =
    { $modules ->
        [one] { $modules } module is in no circuit.
       *[other] { $modules } modules are in no circuit.
    }

# $modules (number)
# $least (text)
# $most (text)
wires-left =
    { $modules ->
        [one] { $modules } module was left: no number of circuits of { $least } to { $most } holds it.
       *[other] { $modules } modules were left: no number of circuits of { $least } to { $most } holds them.
    }

# $circuits (number)
wires-fewest-circuits =
    { $circuits ->
        [one] one circuit
       *[other] { $circuits } circuits, and fewer can't hold them
    }

# $circuits (number)
wires-circuits-found =
    { $circuits ->
        [one] one circuit
       *[other] { $circuits } circuits; fewer were not found
    }

# $leads (number)
wires-fewest-leads =
    { $leads ->
        [one] { $leads } extension lead, and no division has fewer
       *[other] { $leads } extension leads, and no division has fewer
    }
wires-no-lead = no extension lead

# $leads (number)
# $least (text)
wires-leads-at-least =
    { $leads ->
        [one] { $leads } extension lead, at least { $least }
       *[other] { $leads } extension leads, at least { $least } in any division
    }

# $cable (text)
wires-least-cable = { $cable } of way, the least

# $cable (text)
# $least (text)
wires-cable-at-least = { $cable } of way, at least { $least } in any division

# $modules (text)
# $circuits (text)
# $leads (text)
# $cable (text)
wires-claim = { $modules } that may share a circuit: { $circuits }; { $leads }; { $cable }. Over all ways to divide them into as many circuits within these limits and to plug each in any order, cables along the eave and up the slope.

# $modules (text)
# $most (number)
# $instead (number)
# $by (text)
# $circuits (number)
# $now (number)
wires-held-circuits =
    { $circuits ->
        [one] With { $most } modules in a circuit instead of { $instead } ({ $by }), these { $modules } would take one circuit instead of { $now }.
       *[other] With { $most } modules in a circuit instead of { $instead } ({ $by }), these { $modules } would take { $circuits } circuits instead of { $now }.
    }

# $modules (text)
# $most (number)
# $instead (number)
# $by (text)
wires-held-most = With up to { $most } modules in a circuit instead of { $instead } ({ $by }), these { $modules } would make whole circuits.

# $modules (text)
# $least (number)
# $instead (number)
# $by (text)
wires-held-least = With { $least } modules as the fewest in a circuit instead of { $instead } ({ $by }), these { $modules } would make whole circuits.

# $modules (text)
# $would (text)
wires-held-modules = These { $modules } make no whole circuits; { $would } would.

# $leads (number)
wires-extension-leads =
    { $leads ->
        [one] { $leads } extension lead
       *[other] { $leads } extension leads
    }

# $reach (text)
# $each (text)
# $apart (text)
# $takes (text)
# $now (text)
wires-held-leads = The leads of two modules reach { $reach } together. With leads of { $each } each they would reach over { $apart }: { $takes } instead of { $now }.

# $reach (text)
# $each (text)
# $apart (text)
# $takes (text)
# $now (text)
wires-held-trunk = The trunk reaches { $reach } from plug to plug. One with { $each } between plugs would reach over { $apart }: { $takes } instead of { $now }.

## Circuits in the window

circuits-title = Circuits
circuits-title-help = Which modules are one circuit, in what order they are plugged, what a meter shows, and where they lead.
circuits-layer = Circuits and wires
circuits-layer-help = Draw the circuits on their modules: the direction of plugging, both ends, the way to the junction box and the bare copper.
circuits-string-tool = String
circuits-string-tool-help = Drag over modules one after the other to join them to a circuit, or press them one by one.
circuits-string-hint = Drag over modules in the order of plugging; going back takes the last one off. Dragging from an end of a circuit goes on with it.
circuits-box-tool = Junction box
circuits-box-tool-help = Place a junction box, where circuits and the bare copper end.
circuits-box-hint = Click where the junction box stands: clear of eaves, valleys and pathways.
circuits-automatically = String automatically
circuits-automatically-help = Makes all circuits anew: as few as inverter and devices allow, then as few extension leads, then the least cable. It says what is proved. Undo takes it back.
circuits-stringing = Looking for less cable…
circuits-stop-looking = Keep these
circuits-stop-looking-help = End the search; the circuits stay as they are.
circuits-stringing-broke = Stringing stopped by itself: a fault in this program. The job is as it was.
circuits-dropped = The job changed while a better stringing was being looked for, so the answer was dropped.
circuits-nothing-to-string = There is no module to string yet.
circuits-best-order = Best order
circuits-best-order-help = Plug the modules of this circuit in the order with the fewest extension leads and the least cable.
circuits-new = Next circuit
circuits-new-help = Let go of this circuit: the next module begins another.
circuits-turn = Turn about
circuits-turn-help = The same order from the other end: − and + change places.
circuits-delete = Delete circuit
circuits-delete-box = Delete junction box
circuits-change-wiring = Change of wiring
circuits-none-yet = No circuit yet. Press “String automatically”, or take the tool “String” and drag over modules.
circuits-home = Way to the junction box
circuits-copper = Bare copper past every lug
circuits-no-lead = no lead reaches
circuits-inverter = Inverter
circuits-no-inverter = none chosen
circuits-another-inverter = Another inverter
circuits-remove-inverter = Remove this inverter
circuits-edition = NEC edition
circuits-lowest = Lowest air
circuits-lowest-help = The lowest temperature of the air that is expected: the mean of the years' lowest. Modules give their highest voltage then.
circuits-highest = Hottest air
circuits-highest-help = The air temperature that two of a hundred summer hours exceed. Conductors carry less then.
circuits-hottest-cell = Hottest cells
circuits-hottest-cell-help = How hot the cells are in full sun at that air temperature. Strings have their lowest voltage then.
circuits-by-table = Highest voltage by the table of the code
circuits-by-table-help = By the factors of the table, in place of the coefficient of the module's maker.
circuits-not-set = not set
circuits-bad-temperature = Type a temperature such as -5 C or 23 F.
circuits-box = Junction box
circuits-no-box = none yet
circuits-input = Input
circuits-no-input = none yet
circuits-stands = Stands
circuits-on-roof = on the roof, flashed
circuits-under-deck = under the deck
circuits-legs = Way down from the box
circuits-legs-help = Leg by leg from the box to the inverter or the panel: how long, and what the conductors lie in.
circuits-add-leg = Add a leg
circuits-remove-leg = Remove this leg
circuits-lies-in = Lies in
circuits-free-air = free air
circuits-roof-raceway = raceway on the roof
circuits-attic = attic
circuits-wall = wall
circuits-above-roof = Above the roof
circuits-column-circuit = Circuit
circuits-column-modules = Modules
circuits-column-power = kW
circuits-column-cold = Cold, V
circuits-column-standard = Meter, V
circuits-column-hot = Hot, V
circuits-column-amps = Most, A
circuits-column-leads = Leads
circuits-column-to = Leads to
circuits-column-help = Cold: the highest voltage there can be. Meter: what a meter shows of it open at 25 °C, of dc devices their standby voltage. Hot: the lowest at which bare modules work. Leads: extension leads in it.

# $volts (text)
circuits-fact-cold = { $volts } V at most, when cold

# $volts (text)
circuits-fact-hot = { $volts } V when hot, working

circuits-way-home = Ways home

# $first (text)
# $last (text)
circuits-two-ways = { $first } from − and { $last } from +

circuits-way-unknown = not known: the box is not on a face that meets these
circuits-strung-as = Strung automatically
circuits-print-wires = Wire diagram to print…
circuits-print-wires-help = Each block as the crew stands before it: module numbers, leads, extension leads, both ends and the bare copper.
circuits-print-one-line = One-line diagram to print…
circuits-print-one-line-help = From modules to the service panel on one sheet: conductors, currents, what protects them.
circuits-print-handover = Electrician's handover to print…
circuits-print-handover-help = What a meter should show of each circuit, fields to fill in, torques.
circuits-print-labels = Labels to print…
circuits-print-labels-help = The labels that the code asks for, to cut out, with where each goes.
circuits-attic-air = Attic air
circuits-attic-air-help = How hot the attic becomes on such a day. Conductors that lie there carry less.
circuits-service = Service panel
circuits-bus = Bus, A
circuits-bus-help = The rating of the panel's bus. Empty where nobody has looked.
circuits-main-breaker = Main breaker, A
circuits-other-breakers = Other breakers, A
circuits-other-breakers-help = All breakers but the main added up, without the one for this array. Empty where nobody counted them.
circuits-connection = Connected
circuits-bad-number = Type a number such as 200 or 12.5.
circuits-reading = What was measured
circuits-reading-help = What an electrician read on the roof. What lies outside the expected band becomes a finding.
circuits-reading-celsius = Modules at
circuits-reading-celsius-help = How warm the modules were when it was measured.
circuits-reading-volts = Open, V
circuits-reading-polarity = Polarity
circuits-polarity-unknown = not checked
circuits-polarity-right = right
circuits-polarity-wrong = reversed
circuits-reading-insulation = Insulation, MΩ
circuits-reading-test = Tested at, V
circuits-reading-test-help = Never with electronics connected, unless their maker allows it.
circuits-remove-reading = Remove what was measured

# $name (text)
circuits-reading-of = Reading of circuit { $name }

circuits-boxes = Junction boxes
circuits-no-boxes = No junction box yet: the wires end nowhere.

# $name (text)
circuits-box-name = Box { $name }

# $name (text)
circuits-heading = Circuit { $name }

# $name (text)
circuits-string-of = String circuit { $name }

# $name (text)
circuits-order-is-best = Circuit { $name } has its best order already.

# $name (text)
circuits-no-order = The modules of circuit { $name } can't be joined in any order.

# $circuits (number)
circuits-made =
    { $circuits ->
        [one] { $circuits } circuit strung.
       *[other] { $circuits } circuits strung.
    }

# $name (text)
# $modules (text)
# $facts (text)
circuits-live = Circuit { $name }: { $modules }; { $facts }

# $least (text)
# $most (text)
circuits-live-window = { $least } to { $most } allowed

# $volts (text)
circuits-live-volts = { $volts } V when cold

# $amps (text)
circuits-live-amps = { $amps } A at most

# $circuits (number)
circuits-box-words =
    { $circuits ->
        [one] junction box, { $circuits } circuit leads to it
       *[other] junction box, { $circuits } circuits lead to it
    }

# $inverter (text)
# $input (text)
circuits-input-of = { $inverter }, input { $input }

# $input (text)
circuits-input-short = input { $input }

# $leg (text)
circuits-leg = Leg { $leg }

## Texts of data files, by their English

data-module-405-w = Module, 405 W
data-levelling-foot = Levelling foot
data-self-tapping-hex-screw-for-a = Self-tapping hex screw, for a foot
data-module-device = Module device
data-bracket-for-a-module-device = Bracket for a module device
data-base-rail-8-ft-stick = Base rail, 8 ft stick
data-base-rail-splice = Base rail splice
data-end-cap-of-the-base-rail = End cap of the base rail, left
data-end-cap-of-the-base-rail-right = End cap of the base rail, right
data-side-insert-48-in = Side insert, 48 in
data-step-flashing-10-x-7-in = Step flashing, 10 x 7 in, bent 5 and 5 in
data-side-counter-flashing-snap-on-48 = Side counter flashing, snap-on, 48 in
data-head-flashing-one-module-wide = Head flashing, one module wide
data-snap-in-insert-for-a-head = Snap-in insert, for a head flashing
data-head-support = Head support
data-head-corner-flashing-left = Head corner flashing, left
data-head-corner-flashing-right = Head corner flashing, right
data-inside-corner-flashing = Inside corner flashing
data-roofing-nail-12-ga-1-1 = Roofing nail, 12 ga, 1 1/4 in
data-underlayment-fire-rated-48-in-x = Underlayment, fire-rated, 48 in x 50 ft
data-cap-nail = Cap nail
data-self-adhered-membrane-36-in-x = Self-adhered membrane, 36 in x 66.7 ft
data-l-shaped-corner-membrane = L-shaped corner membrane
data-starter-strip-peel-and-stick = Starter strip, peel-and-stick
data-bonding-jumper-u-shaped = Bonding jumper, U-shaped
data-screw-between-foot-and-module-fh = screw between foot and module, FH-103
data-base-rail-and-its-screws = base rail and its screws
data-hooks-between-rows = hooks between rows
data-lug = Lug
data-bare-copper-conductor-solid-6-awg = Bare copper conductor, solid, 6 AWG
data-lead-row-to-row = Lead, row to row
data-home-run-lead-set = Home run lead set
data-junction-box-with-roof-flashing = Junction box with roof flashing
data-junction-box-under-the-deck = Junction box, under the deck
data-extension-lead-1-m = Extension lead, 1 m
data-extension-lead-2-m = Extension lead, 2 m
data-extension-lead-5-m = Extension lead, 5 m
data-cable-for-home-runs-red-10-awg = Cable for home runs, red, 10 AWG
data-cable-for-home-runs-black-10-awg = Cable for home runs, black, 10 AWG
data-plug-pair-for-home-runs = Plug pair for home runs
data-lug-bare-copper-10-to-6 = Lug, bare copper 10 to 6 AWG
data-terminals-in-the-junction-box = Terminals in the junction box
data-inverter-dc-terminals = Inverter, dc terminals
data-inverter-ac-terminals = Inverter, ac terminals
data-inverter-7-6-kw-for-dc-devices = Inverter, 7.6 kW, for dc devices
data-inverter-11-5-kw-for-dc-devices = Inverter, 11.5 kW, for dc devices
data-trunk-extension-2-m = Trunk extension, 2 m
data-trunk-extension-5-m = Trunk extension, 5 m
data-trunk-cable-for-home-runs-12-awg = Trunk cable for home runs, 12 AWG
data-conduit-3-4-in-10-ft = Conduit, 3/4 in, 10 ft stick, allowance
data-labels-for-raceway-and-disconnect-allowance = Labels for raceway and disconnect, allowance
data-sheathing-7-16-in-4-x = Sheathing, 7/16 in, 4 x 8 ft, to replace, allowance
data-ring-shank-nail-for-sheathing-2 = Ring-shank nail for sheathing, 2 3/8 in
data-drip-edge-for-eaves-10-ft = Drip edge for eaves, 10 ft
data-drip-edge-for-rakes-10-ft = Drip edge for rakes, 10 ft
data-leak-barrier-self-adhered-36-in = Leak barrier, self-adhered, 36 in x 66.7 ft
data-underlayment-no-15-felt-36-in = Underlayment, No. 15 felt, 36 in x 144 ft
data-starter-strip-105-ft-bundle = Starter strip, 105 ft bundle
data-shingles-three-tab-36-x-12 = Shingles, three-tab, 36 x 12 in
data-hip-and-ridge-caps = Hip and ridge caps
data-valley-metal-24-in-wide-10 = Valley metal, 24 in wide, 10 ft
data-pipe-boot-up-to-2-in = Pipe boot, up to 2 in
data-pipe-boot-3-in = Pipe boot, 3 in
data-pipe-boot-4-in = Pipe boot, 4 in
data-pipe-boot-5-and-6-in = Pipe boot, 5 and 6 in
data-roof-vent = Roof vent
data-sealant-10-oz-tube = Sealant, 10 oz tube
data-fall-arrest-set-harness-lanyard-rope = Fall arrest set: harness, lanyard, rope grab
data-ridge-anchor-temporary = Ridge anchor, temporary
data-gloves-and-safety-glasses = Gloves and safety glasses
data-tarpaulin-20-x-30-ft = Tarpaulin, 20 x 30 ft
data-hook-blades = Hook blades
data-strip-the-old-roof = Strip the old roof
data-pull-or-drive-proud-nails-and = Pull or drive proud nails and sweep, allowance
data-dry-in-drip-edge-leak-barrier = Dry in: drip edge, leak barrier, underlayment
data-pre-assemble-modules-on-the-ground = Pre-assemble modules on the ground
data-carry-and-set-modules-two-people = Carry and set modules, two people each
data-lay-shingles-starter-and-caps = Lay shingles, starter and caps
data-flash-walls-valleys-and-what-comes = Flash walls, valleys and what comes through
data-connect-modules-ground-junction-box = Connect modules, ground, junction box
data-old-roofing-carted-away = Old roofing, carted away
data-deck-screw-2-1-2-in = Deck screw, 2 1/2 in, for feet and base rail
data-carriage-bolt-and-nut-for-a = Carriage bolt and nut, for a bracket
data-membrane-strip-self-adhered-9-in = Membrane strip, self-adhered, 9 in x 50 ft
data-primer-for-self-adhered-membrane-1 = Primer for self-adhered membrane, 1 gal
data-framing-lumber-for-crickets-2-x = Framing lumber for crickets, 2 x 4 in, 10 ft
data-kick-out-flashing = Kick-out flashing
data-apron-flashing-at-walls-and-chimneys = Apron flashing at walls and chimneys, 10 ft
data-back-pan-metal-18-in-wide = Back pan metal, 18 in wide, 10 ft
data-cricket-metal-24-in-x-10 = Cricket metal, 24 in x 10 ft
data-counter-flashing-for-chimneys-10-ft = Counter flashing for chimneys, 10 ft
data-skylight-flashing-kit = Skylight flashing kit
data-ridge-vent-4-ft = Ridge vent, 4 ft
data-ladder-hoist-a-day = Ladder hoist, a day
data-rope-1-2-in-x-100 = Rope, 1/2 in x 100 ft, for hauling
data-replace-sheathing-frame-crickets = Replace sheathing, frame crickets
data-set-the-base-rail = Set the base rail
data-flash-the-head-of-the-array = Flash the head of the array
data-flash-the-sides-of-the-array = Flash the sides of the array
data-permit = Permit
data-one-spare-module = One spare module
data-primer-for-membranes = Primer for membranes
data-ridge-vent = Ridge vent
data-ladder-hoist = Ladder hoist
data-hauling-ropes = Hauling ropes
data-where-a-broken-one-would-hold = Where a broken one would hold up the crew: makers change sizes from year to year.
data-on-a-deck-that-is-dusty = On a deck that is dusty, old or cold, where self-adhered membrane does not stick.
data-where-the-attic-is-vented-at = Where the attic is vented at the ridge, and has its inlet at the eaves.
data-brings-modules-and-bundles-up-no = Brings modules and bundles up: no module is carried up a ladder.
data-where-no-hoist-can-stand-two = Where no hoist can stand: two people haul, one guides.
data-where-the-office-takes-it-out = Where the office takes it out for the owner.
data-can = can
data-day = day
data-rope = rope
data-kit = kit
data-permit-2 = permit
data-cap = cap
data-anchor = anchor
data-bag = bag
data-sheet = sheet
data-vent = vent
data-tube = tube
data-device = device
data-tarpaulin = tarpaulin
data-piece = piece
data-bundle = bundle
data-stick = stick
data-insert = insert
data-roll = roll
data-box = box
data-boot = boot
data-lead = lead
data-container = container
data-hour = hour
data-set = set
data-spool = spool
data-module = module
data-roof-crew = Roof crew
data-ground-crew = Ground crew
data-electrician = Electrician
data-falls = Falls
data-ladders = Ladders
data-lifting = Lifting
data-weather = Weather
data-live-dc = Live dc
data-deck = Deck
data-who-does-what = Who does what
data-six-feet-or-more-above-a = Six feet or more above a lower level: guardrail, net or personal fall arrest; where none can be had, a written fall protection plan. Rig it before the first trip up.
data-guardrail-top-rail-42-in-above = Guardrail: top rail 42 in above the walking level, 3 in more or less.
data-fall-arrest-anchors-for-5-000 = Fall arrest: anchors for 5,000 lb a worker, or engineered with a safety factor of two; free fall 6 ft at most; arresting force 1,800 lb at most. A restraint that keeps a worker from reaching the edge is accepted.
data-rails-reach-at-least-3-ft = Rails reach at least 3 ft above the landing; the foot stands a quarter of the working length from the wall. Tie it off.
data-two-people-carry-a-module-no = Two people carry a module. No module goes up a ladder in a hand: use a hoist or a lift.
data-stop-in-wind-on-a-wet = Stop in wind, on a wet or frosted deck, and when a storm is near. Water, shade and rest in the heat.
data-modules-are-live-whenever-light-falls = Modules are live whenever light falls on them; neither an open disconnect nor rapid shutdown makes a module's own leads dead. Never part dc connectors under load: the arc burns and blinds.
data-de-energize-and-ground-circuits-that = De-energize and ground circuits that a worker could touch, or guard them; tag what is switched off.
data-look-for-soft-split-or-unsupported = Look for soft, split or unsupported sheathing before anyone loads it. Pull or drive every proud nail and sweep: membranes and feet slip on grit.
data-structural-design-is-a-licensed-engineers = Structural design is a licensed engineer's, electrical work a licensed electrician's where the law asks it. Local codes and the maker's instructions come before this list.
data-drip-edge-at-eaves-and-rakes = Drip edge at eaves and rakes: pieces lap 2 in, reach 1/4 in below the sheathing and 2 in up the deck, fastened at most 12 in apart; underlayment over it at eaves, under it at rakes.
data-a-roof-integrated-array-has-the = A roof-integrated array has the fire class that is asked of the roof covering (UL 790 or ASTM E108), with the underlayment of its listing under it; so has the roof beyond it.
data-common-practice-no-source = common practice, no source
data-the-kit = the kit
data-none-in-this-book = none in this book
data-fernhollow-deck-mount-kit-2026 = Fernhollow deck-mount kit 2026
data-a-19-in-strip-along-the = A 19 in strip along the eave, then full 36 in sheets, each lapped 19 in over the one below (IRC table R905.1.1(2), from memory). At 4:12 and more: one layer, lapped 2 in, end laps set off by at least 6 ft.
