package service

import "math"

// from is a number of a range of the kind.
func (d drawing) from(name string) float64 {
	r := d.kind.ranges[name].([]any)
	low, high := r[0].(float64), r[1].(float64)
	return low + (high-low)*d.Float64()
}

// oneOf is one of the choices of the kind.
func (d drawing) oneOf(name string) any {
	list := d.kind.ranges[name].([]any)
	return list[d.IntN(len(list))]
}

// sts and rws are the stitches and the rows to a length.
func (d drawing) sts(cm float64) int { return nearest(cm * d.stitches / 10) }
func (d drawing) rws(cm float64) int { return nearest(cm * d.rows / 10) }

func nearest(x float64) int { return int(math.Floor(x + 0.5)) }

// like is a count made as odd or even as another.
func like(count, other int) int { return count + (count-other)&1 }

func (d drawing) gauge() map[string]any {
	return map[string]any{"stitches": d.stitches, "rows": d.rows}
}

func (d drawing) castOn() map[string]any {
	q := map[string]any{"gauge": d.gauge(), "stitch_rule": d.oneOf("stitch_rules")}
	if rule := q["stitch_rule"].(map[string]any); len(rule) == 0 {
		delete(q, "stitch_rule")
	}
	width, ease := d.body["chest_cm"], 0.0
	switch d.kind.ID {
	case "cast-on-body":
		ease = d.from("ease_cm")
	case "cast-on-hat":
		width = d.body["head_cm"]
		ease = width * d.from("ease_percent") / 100
	case "cast-on-sock":
		width = d.body["foot_cm"]
		ease = width * d.from("ease_percent") / 100
	}
	q["width_cm"], q["ease_cm"] = width, ease
	return q
}

func (d drawing) spacing() map[string]any {
	q := map[string]any{"construction": d.kind.ranges["construction"], "operation": d.oneOf("operations")}
	var start, end int
	switch d.kind.ID {
	case "spacing-rib-to-body":
		end = d.sts(d.body["chest_cm"] + d.from("ease_cm"))
		start = nearest(float64(end) * d.from("start_share"))
	case "spacing-flat-back":
		start = d.sts((d.body["chest_cm"] + d.from("ease_cm")) / 2)
		end = nearest(float64(start) * d.from("start_share"))
		if q["operation"] == "OPERATION_M1L" {
			start, end = end, start
		}
		q["edge_stitches"] = d.oneOf("edge_stitches")
	case "spacing-yoke-round":
		start = nearest(float64(d.sts(d.body["chest_cm"]+6)) * d.from("joined_share"))
		end = nearest(float64(start) * (1 - d.from("removed")))
	case "spacing-cuff-to-sleeve":
		end = d.sts(d.body["wrist_cm"] + d.from("ease_cm") + 2)
		start = nearest(float64(end) * d.from("start_share"))
	}
	q["start_stitches"], q["end_stitches"] = start, end
	return q
}

func (d drawing) taper() map[string]any {
	q := map[string]any{"gauge": d.gauge(), "construction": d.kind.ranges["construction"]}
	switch d.kind.ID {
	case "taper-thumb-gusset":
		end := like(d.sts(d.body["hand_cm"]*d.from("gusset_share")), 1)
		q["construction"] = "CONSTRUCTION_ROUND"
		q["start_stitches"], q["end_stitches"] = 3, end
		q["height_rows"] = int(d.oneOf("rounds_between").(float64)) * (end - 3) / 2
	case "taper-v-neck":
		delete(q, "construction")
		end := d.sts(d.from("shoulder_cm"))
		q["start_stitches"], q["end_stitches"] = end+d.sts(d.from("half_neck_cm")), end
		q["height_rows"], q["edges"] = d.rws(d.from("depth_cm")), "SHAPED_EDGES_END"
	default:
		cuff := d.sts(d.body["wrist_cm"] + d.from("cuff_ease_cm"))
		top := like(d.sts(d.body["upper_arm_cm"]+d.from("upper_ease_cm")), cuff)
		q["start_stitches"], q["end_stitches"] = cuff, top
		if d.kind.ranges["direction"] == "down" {
			q["start_stitches"], q["end_stitches"] = top, cuff
		}
		q["height_rows"] = d.rws(d.body["arm_length_cm"] - d.from("less_cm"))
	}
	return q
}

func (d drawing) waist() map[string]any {
	start := d.sts((d.body["chest_cm"] + d.from("ease_cm")) / 2)
	waist := start - 2*max(1, nearest(float64(d.sts(d.from("narrower_cm")/2))/2))
	to := d.rws(d.from("to_waist_cm"))
	at := to + d.rws(d.from("at_waist_cm"))
	out := at + d.rws(d.from("to_bust_cm"))
	return map[string]any{"gauge": d.gauge(), "start_stitches": start, "points": []map[string]any{
		{"height_rows": to, "stitches": waist}, {"height_rows": at, "stitches": waist}, {"height_rows": out, "stitches": start}}}
}

// joined is what yokes and raglans ask alike.
func (d drawing) joined(body int) map[string]any {
	return map[string]any{"gauge": d.gauge(), "body_stitches": body,
		"sleeve_stitches":   nearest(float64(body) * d.from("sleeve_share")),
		"underarm_stitches": nearest(float64(body) * d.from("underarm_share")),
		"depth_rounds":      d.rws(d.body["armhole_depth_cm"] + d.from("deeper_than_armhole_cm"))}
}

func (d drawing) yoke() map[string]any {
	body := d.sts(d.body["chest_cm"] + d.from("ease_cm"))
	q := d.joined(body)
	if d.kind.ID == "yoke-percentage" {
		q["neck_stitches"] = nearest(float64(body) * d.from("neck_share"))
		return q
	}
	q["neck_stitches"] = d.sts(d.body["head_cm"] / d.from("head_by_neck"))
	q["schedule"] = "YOKE_SCHEDULE_CONE"
	depth := float64(q["depth_rounds"].(int)) * 10 / d.rows
	q["decrease_rounds"] = max(1, nearest(depth/d.from("cm_between_decrease_rounds")))
	return q
}

func (d drawing) raglan() map[string]any {
	body := like(d.sts(d.body["chest_cm"]+d.from("ease_cm")), 0)
	q := d.joined(body)
	line := int(d.oneOf("line_stitches").(float64))
	q["line_stitches"] = line
	sleeve, underarm := q["sleeve_stitches"].(int), q["underarm_stitches"].(int)
	// Of a line half is the body's, an odd stitch too.
	fromBody := (line + 1) / 2
	sleeveStart := sleeve - underarm - 2*(line-fromBody)
	back := (body-2*underarm)/2 - 2*fromBody
	top := like(d.sts(d.from("sleeve_top_cm")), sleeveStart)
	neck := d.sts(d.body["head_cm"] / d.from("head_by_neck"))
	half := like((neck-2*top-4*line)/2, back)
	q["sleeve_top_stitches"], q["front_neck_stitches"], q["back_neck_stitches"] = top, half, half
	return q
}

func (d drawing) pickUp() map[string]any {
	q := map[string]any{"gauge": d.gauge(), "length_rows": d.rws(d.from("length_cm")), "band_gauge": map[string]any{
		"stitches": nearest(d.stitches*d.from("band_stitches_by_stitches")*2) / 2, "rows": d.rows}}
	if rule := d.oneOf("stitch_rules").(map[string]any); len(rule) > 0 {
		q["stitch_rule"] = rule
	}
	return q
}

func (d drawing) buttonholes() map[string]any {
	length := d.from("length_cm")
	return map[string]any{"band_stitches": d.sts(length), "band_rows": d.rws(d.from("height_cm")),
		"hole_count": max(2, nearest(length/d.from("apart_cm"))), "hole_stitches": max(1, d.sts(d.from("hole_cm"))),
		"before_first_places": max(2, d.sts(d.from("first_cm")))}
}

func (d drawing) shoulder() map[string]any {
	return map[string]any{"gauge": d.gauge(), "width_stitches": d.sts(d.from("width_cm")), "rise_rows": like(d.rws(d.from("rise_cm")), 0),
		"tall_end": d.oneOf("tall_ends"), "turn_method": d.oneOf("turn_methods")}
}
