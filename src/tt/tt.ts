console.log("hi" as string)
