package draft_test

import (
	"fmt"

	"example.com/knitmath/knitmath/draft"
)

func Example() {
	fmt.Println(draft.Word("ＰＡＴ\u00adＴＥＲＮ"), draft.Front("gauge"), draft.Part("sleeves"), draft.Manner("loosely"))
	n, _ := draft.Number("twenty-one")
	fmt.Println(n)
	// Output:
	// pattern true true true
	// 21
}
