//! The form of a whole case: what is written, what may be left out, what is not taken in. Worked by hand.
use scantling::{
    Allowances, Back, Base, Case, FaceFrame, FrameJoint, FrontSet, Growth, Joint, Length, Mount, Overall, PinHoles, Shelves,
    Site, TopAt, Unit,
};
use serde::Serialize;
use serde::de::DeserializeOwned;

fn inches(num: i64, den: u64) -> Length {
    Length::fraction(num, den, Unit::Inch)
}

fn box_of_three_feet() -> Case {
    Case::new(inches(36, 1), inches(72, 1), inches(12, 1))
}

#[track_caller]
fn comes_back<T: Serialize + DeserializeOwned + PartialEq + std::fmt::Debug>(value: &T) {
    let mut named = Vec::new();
    ciborium::into_writer(value, &mut named).unwrap();
    assert_eq!(&serde_json::from_str::<T>(&serde_json::to_string(value).unwrap()).unwrap(), value);
    assert_eq!(&postcard::from_bytes::<T>(&postcard::to_allocvec(value).unwrap()).unwrap(), value);
    assert_eq!(&ciborium::from_reader::<T, _>(&*named).unwrap(), value);
}

#[track_caller]
fn has<T: Serialize + DeserializeOwned + PartialEq + std::fmt::Debug>(value: &T, json: &str) {
    assert_eq!(serde_json::to_string(value).unwrap(), json);
    comes_back(value);
}

#[test]
fn what_a_case_is_made_of() {
    has(&Overall::Molding, r#""molding""#);
    has(&FrameJoint::StilesBetween, r#""stiles between""#);
    has(&Joint::Butt, r#"{"kind":"butt","depth":null}"#);
    has(&Joint::Dado(inches(1, 4)), r#"{"kind":"dado","depth":"1/4 in"}"#);
    has(&Joint::Rabbet(inches(3, 8)), r#"{"kind":"rabbet","depth":"3/8 in"}"#);
    has(&TopAt::OVER_SIDES, r#"{"kind":"over sides","joint":null,"past_sides":"0 in","past_front":"0 in"}"#);
    has(
        &TopAt::BetweenSides(Joint::Butt),
        r#"{"kind":"between sides","joint":{"kind":"butt","depth":null},"past_sides":null,"past_front":null}"#,
    );
    has(&Back::None, r#"{"kind":"none","thickness":null,"depth":null,"set_in":null}"#);
    let (thickness, depth, set_in) = (inches(7, 32), inches(3, 8), inches(1, 2));
    has(&Back::Applied { thickness }, r#"{"kind":"applied","thickness":"7/32 in","depth":null,"set_in":null}"#);
    has(&Back::Rabbet { thickness, depth }, r#"{"kind":"rabbet","thickness":"7/32 in","depth":"3/8 in","set_in":null}"#);
    has(
        &Back::Groove { thickness, depth, set_in },
        r#"{"kind":"groove","thickness":"7/32 in","depth":"3/8 in","set_in":"1/2 in"}"#,
    );
    let (height, stock) = (inches(4, 1), inches(3, 4));
    has(&Base::None, r#"{"kind":"none","height":null,"recess":null,"stock":null,"from_sides":null,"ties":null}"#);
    has(
        &Base::SidesToFloor { height, recess: inches(3, 1), stock },
        r#"{"kind":"sides to floor","height":"4 in","recess":"3 in","stock":"3/4 in","from_sides":null,"ties":null}"#,
    );
    has(
        &Base::Separate { height, stock, from_front: inches(3, 1), from_sides: inches(1, 2), ties: 1 },
        r#"{"kind":"separate","height":"4 in","recess":"3 in","stock":"3/4 in","from_sides":"1/2 in","ties":1}"#,
    );
    has(&Allowances::USUAL, r#"{"back":"1/16 in","adjustable_shelf":"1/8 in","glue":"0 in"}"#);
    has(&Growth::Step(stock), r#"{"kind":"step","length":"3/4 in","ratio":null}"#);
    has(&Growth::Ratio(num_rational::Ratio::new(6, 5)), r#"{"kind":"ratio","length":null,"ratio":[6,5]}"#);
}

#[test]
fn shelves() {
    let pins = PinHoles::new(inches(1, 1), inches(4, 1), inches(3, 2), inches(3, 8));
    let none = r#""growth":null,"pins":null}"#;
    has(&Shelves::Equal(4), &format!(r#"{{"kind":"equal","count":4,"openings":null,"shares":null,{none}"#));
    has(
        &Shelves::Openings(vec![inches(15, 1)]),
        &format!(r#"{{"kind":"openings","count":null,"openings":["15 in"],"shares":null,{none}"#),
    );
    has(
        &Shelves::Proportional(vec![3, 2, 2]),
        &format!(r#"{{"kind":"proportional","count":null,"openings":null,"shares":[3,2,2],{none}"#),
    );
    comes_back(&Shelves::Growing(4, Growth::Bottom(inches(15, 1))));
    comes_back(&Shelves::Growing(4, Growth::Top(inches(15, 1))));
    has(
        &Shelves::Adjustable(5, pins),
        r#"{"kind":"adjustable","count":5,"openings":null,"shares":null,"growth":null,"pins":{"pitch":"1 in","first":"4 in","from_edges":"1 1/2 in","deep":"3/8 in"}}"#,
    );
}

#[test]
fn fronts_and_the_place() {
    let inset = r#"{"kind":"inset","past":null,"gap":"1/8 in"}"#;
    has(&Mount::Inset { gap: inches(1, 8) }, inset);
    let overlay = Mount::Overlay { past: inches(1, 2), gap: inches(1, 8) };
    has(&overlay, r#"{"kind":"overlay","past":"1/2 in","gap":"1/8 in"}"#);
    has(
        &FrontSet::doors(2, Mount::Inset { gap: inches(1, 8) }, inches(3, 4)),
        &format!(r#"{{"kind":"doors","count":2,"growth":null,"mount":{inset},"stock":"3/4 in"}}"#),
    );
    comes_back(&FrontSet::drawers(4, Growth::Step(inches(1, 1)), overlay, inches(3, 4)));
    let given = r#"{"kind":"drawers","count":3,"mount":{"kind":"inset","gap":"1/8 in"},"stock":"3/4 in"}"#;
    let drawers = FrontSet::drawers(3, Growth::Step(Length::ZERO), Mount::Inset { gap: inches(1, 8) }, inches(3, 4));
    assert_eq!(serde_json::from_str::<FrontSet>(given).unwrap(), drawers);
    has(&Site::OPEN, r#"{"widths":null,"scribes":["0 in","0 in"],"floor":["0 in","0 in"],"ceiling":null}"#);
    has(
        &Site::new([36, 35, 37].map(|count| inches(count, 1))).scribing(inches(1, 2), Length::ZERO).under(inches(96, 1)),
        r#"{"widths":["36 in","35 in","37 in"],"scribes":["1/2 in","0 in"],"floor":["0 in","0 in"],"ceiling":"96 in"}"#,
    );
    assert_eq!(serde_json::from_str::<Site>("{}").unwrap(), Site::OPEN);
}

#[test]
fn a_whole_case() {
    let frame =
        FaceFrame::new(inches(3, 4), inches(7, 4)).rails(inches(9, 4), inches(3, 2)).past_sides(inches(1, 4), inches(0, 1));
    let case = box_of_three_feet()
        .measured_over(Overall::Frame)
        .sheet(inches(23, 32))
        .frame(frame)
        .level_with_rail(true)
        .joined(Joint::Dado(inches(1, 4)))
        .bays(2, inches(23, 32))
        .shelves(Shelves::Equal(4));
    comes_back(&case);
    let doors = FrontSet::doors(2, Mount::Inset { gap: inches(1, 8) }, inches(3, 4));
    comes_back(&case.clone().fronts(doors).set_back(inches(1, 2)).stopped(inches(3, 8)));
    let json = serde_json::to_value(&case).unwrap();
    assert_eq!(json["width"], "36 in");
    assert_eq!(json["over"], "frame");
    assert_eq!(json["frame"]["past_left"], "1/4 in");
    assert_eq!(json["partition"], "23/32 in");
}

#[test]
fn what_is_left_out_is_as_usual() {
    let case: Case = serde_json::from_str(r#"{"width":"36 in","height":"6'","depth":"1 ft"}"#).unwrap();
    assert_eq!(case, box_of_three_feet());
    let frame: FaceFrame = serde_json::from_str(r#"{"stock":"3/4 in","stile":"1 1/2 in"}"#).unwrap();
    assert_eq!(frame, FaceFrame::new(inches(3, 4), inches(3, 2)));
    let allowances: Allowances = serde_json::from_str(r#"{"glue":"1/32 in"}"#).unwrap();
    assert_eq!(allowances, Allowances::new(inches(1, 16), inches(1, 8), inches(1, 32)));
    let top: TopAt = serde_json::from_str(r#"{"kind":"over sides"}"#).unwrap();
    assert_eq!(top, TopAt::OVER_SIDES);
}

#[track_caller]
fn refuses<T: DeserializeOwned + std::fmt::Debug>(json: &str, message: &str) {
    let error = serde_json::from_str::<T>(json).expect_err(json).to_string();
    assert_eq!(error.split(" at line ").next(), Some(message), "{json}");
}

#[test]
fn what_no_case_can_be() {
    refuses::<Case>(r#"{"width":"36 in","height":"72 in"}"#, "missing field `depth`");
    refuses::<Case>(
        r#"{"width":"36 in","height":"72 in","depth":"12"}"#,
        "a number without a unit: found `12` at bytes 0..2, expected a unit behind the number; write the unit, as in 17 5/8 in",
    );
    let own = "has measures of its own: one of them is missing, or there is one that it does not have";
    refuses::<Joint>(r#"{"kind":"dado"}"#, &format!("a kind of joint: `dado` {own}"));
    refuses::<Joint>(r#"{"kind":"butt","depth":"1/4 in"}"#, &format!("a kind of joint: `butt` {own}"));
    refuses::<Back>(r#"{"kind":"rabbet","thickness":"1/4 in"}"#, &format!("a kind of back: `rabbet` {own}"));
    refuses::<Base>(r#"{"kind":"none","height":"4 in"}"#, &format!("a kind of base: `none` {own}"));
    refuses::<TopAt>(r#"{"kind":"between sides","past_front":"1 in"}"#, &format!("a place of the top: `between sides` {own}"));
    refuses::<Shelves>(r#"{"kind":"equal","openings":["12 in"]}"#, &format!("a kind of shelves: `equal` {own}"));
    refuses::<Growth>(r#"{"kind":"ratio","ratio":[6,0]}"#, &format!("a kind of growth: `ratio` {own}"));
    refuses::<Mount>(r#"{"kind":"inset","past":"1/2 in","gap":"1/8 in"}"#, &format!("a mount of fronts: `inset` {own}"));
    refuses::<Mount>(r#"{"kind":"overlay","gap":"1/8 in"}"#, &format!("a mount of fronts: `overlay` {own}"));
    refuses::<FrontSet>(
        r#"{"kind":"doors","count":2,"growth":{"kind":"step","length":"1 in"},"mount":{"kind":"inset","gap":"1/8 in"},"stock":"3/4 in"}"#,
        &format!("a kind of fronts: `doors` {own}"),
    );
    refuses::<Overall>(r#""floor""#, "unknown variant `floor`, expected one of `box`, `frame`, `top`, `molding`");
}
